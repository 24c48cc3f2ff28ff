import type { Language } from "./language.ts";

/** Ours, not the platform's: a record frozen on a phone reads the same wherever it is made again. Source: Unicode CLDR, months of "en" and "es", abbreviated. */
export const MONTHS: Readonly<Record<Language, readonly string[]>> = {
  en: ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sept", "Oct", "Nov", "Dec"],
  es: ["ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sept", "oct", "nov", "dic"],
};

/**
 * An ISO day as it is written in running text; what is no ISO day stays as it came.
 * @example writtenDay("en")("2027-01-05") // => "5 Jan 2027"
 */
export const writtenDay =
  (language: Language) =>
  (iso: string): string => {
    const [, year, month, day] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(iso) ?? [];
    const name = MONTHS[language][Number(month) - 1];
    return name ? `${Number(day)} ${name} ${year}` : iso;
  };
