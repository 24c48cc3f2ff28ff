import { spoken } from "../words/packs.ts";

export const foundWords = spoken("visit").found;
