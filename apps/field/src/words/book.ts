import { spoken } from "./packs.ts";

export const bookWords = spoken("first").book;
