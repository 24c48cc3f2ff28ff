import { spoken } from "../words/packs.ts";

export const procedureWords = spoken("visit").procedures;
