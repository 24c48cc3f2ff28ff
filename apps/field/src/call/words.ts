import { spoken } from "../words/packs.ts";

export const callWords = spoken("visit").call;
