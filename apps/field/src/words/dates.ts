import { spoken } from "./packs.ts";

export const dateWords = spoken("first").dates;
