import { spoken } from "./packs.ts";

export const setupWords = spoken("first").setup;
