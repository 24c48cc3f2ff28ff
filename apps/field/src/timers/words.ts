import { spoken } from "../words/packs.ts";

export const timerWords = spoken("first").timers;
