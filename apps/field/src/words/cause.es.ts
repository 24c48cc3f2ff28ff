import { causeEs, practiceEs } from "../cause/words.es.ts";
import { scoreEs } from "../score/words.es.ts";
import type { Packs } from "./packs.ts";

export const causePackEs: Packs["cause"] = { cause: causeEs, practice: practiceEs, score: scoreEs };
