import { spoken } from "../words/packs.ts";

export const kindWords = spoken("visit").kinds;
