import { type Language, languageOf } from "@tapside/words";

const KEY = "language";

/** The technician's language: the one chosen on this phone, else the first of the phone's own that is known here, else English. */
export function languageChosen(): Language {
  const ofPhone = navigator.languages.map((tag) => languageOf(tag.split("-")[0]));
  return languageOf(localStorage.getItem(KEY) ?? undefined) ?? ofPhone.find(Boolean) ?? "en";
}

/** Keeps the choice; the words are those of the next start. */
export const chooseLanguage = (language: Language): void => localStorage.setItem(KEY, language);
