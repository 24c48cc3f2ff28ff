import type { SaidOfCause } from "@tapside/diagnosis";
import type { CauseMessages } from "./cause-messages.ts";
import { causesEn } from "./en/causes.ts";
import { causesEs } from "./es/causes.ts";
import { type Language, languageOf } from "./language.ts";

const CAUSES: Readonly<Record<Language, CauseMessages>> = { en: causesEn, es: causesEs };

/** The words of finding a cause; English where the language is not known here. */
export const causesInLanguage = (language: string | undefined): CauseMessages =>
  CAUSES[languageOf(language) ?? "en"];

/** What an owner's record says of causes, their sizes phrased in its language. */
export const sizesInLanguage = (said: readonly SaidOfCause[], language: string | undefined) =>
  said.map(({ measures, ...of }) => ({ ...of, sizes: measures.map(causesInLanguage(language).measure) }));
