import { causeEn, practiceEn } from "../cause/words.en.ts";
import { scoreEn } from "../score/words.en.ts";

/** What finding a cause says. */
export const causePackEn = { cause: causeEn, practice: practiceEn, score: scoreEn };
