import { spoken } from "../words/packs.ts";

export const waterPageWords = spoken("first").water;
