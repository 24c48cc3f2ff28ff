import { spoken } from "../words/packs.ts";

export const { cause: causeWords, practice: practiceWords } = spoken("cause");
