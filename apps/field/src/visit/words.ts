import { spoken } from "../words/packs.ts";

export const visitWords = spoken("visit").visit;
