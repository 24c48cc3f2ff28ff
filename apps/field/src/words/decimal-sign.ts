import type { Language } from "@tapside/words";
import { languageChosen } from "./language-chosen.ts";

/** Spanish-speaking countries that write a comma; the others, and "es-419", write a point. Source: Unicode CLDR, numbers of "es" and its regions. */
const COMMA = ["ES", "AR", "BO", "CL", "CO", "CR", "EC", "GQ", "PY", "UY", "VE"];

/** The sign a phone of this language tag writes, for the languages known here: "es-CO" a comma, "es-MX" and "en" a point. */
export function decimalSignOfTag(tag: string): "." | "," {
  const { language, region } = new Intl.Locale(tag);
  return language === "es" && COMMA.includes(region ?? "ES") ? "," : ".";
}

/** The sign of a language as this phone's region writes it: by the first of the phone's languages that is this one, else by the language alone. */
export const signOfPhone = (language: Language): "." | "," =>
  decimalSignOfTag(navigator.languages.find((tag) => new Intl.Locale(tag).language === language) ?? language);

/** The sign numbers are typed with: as set in this book, else as the language chosen writes it where the phone is. Both are taken. */
export const decimalSignOf = (settings: { readonly decimalSign?: "." | "," } | undefined): "." | "," =>
  settings?.decimalSign ?? signOfPhone(languageChosen());
