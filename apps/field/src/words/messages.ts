import { spoken } from "./packs.ts";

export const messages = spoken("first").messages;
