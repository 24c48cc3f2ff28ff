import { spoken } from "./packs.ts";

export const officeWords = spoken("first").office;
