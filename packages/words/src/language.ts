/** Languages all words exist in. */
export const LANGUAGES = ["en", "es"] as const;

export type Language = (typeof LANGUAGES)[number];

/** A language known here, or nothing. */
export const languageOf = (text: string | undefined): Language | undefined =>
  LANGUAGES.find((language) => language === text);
