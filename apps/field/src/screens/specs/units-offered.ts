import { setupWords as words } from "../../words/setup.ts";

export const PRESSURE = ["psi", "bar", "kPa"] as const;

/** Ids and names of a word list, as a choice offers them. */
export const choicesOf = (names: Readonly<Record<string, string>>) => Object.entries(names);

export const SCALES = choicesOf(words.scales);
