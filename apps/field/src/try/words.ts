import { spoken } from "../words/packs.ts";

export const tryWords = spoken("visit").tryOut;
