import type { Language } from "./language.ts";
import type { DecimalSign } from "./messages.ts";

/** What a language writes its decimals behind where no region is known. Source: Unicode CLDR, numbers of "en" and "es". */
const SIGNS: Record<Language, DecimalSign> = { en: ".", es: "," };

/** The sign of a language here: its words ask for it when they are loaded. */
export const decimalSignIn = (language: Language): DecimalSign => SIGNS[language];

/** Regions of a language differ: who knows the region says so, before the words of the language are loaded. */
export function writeDecimals(language: Language, sign: DecimalSign): void {
  SIGNS[language] = sign;
}
