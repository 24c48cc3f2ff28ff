import { spoken } from "../words/packs.ts";

export const scoreWords = spoken("cause").score;
