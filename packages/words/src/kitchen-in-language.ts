import { kitchenEn } from "./en/kitchen.ts";
import { kitchenEs } from "./es/kitchen.ts";
import type { KitchenWords } from "./kitchen-words.ts";
import { type Language, languageOf } from "./language.ts";

const KITCHEN: Readonly<Record<Language, KitchenWords>> = { en: kitchenEn, es: kitchenEs };

/** The words of the pages for a kitchen; English where the language is not known here. */
export const kitchenInLanguage = (language: string | undefined): KitchenWords =>
  KITCHEN[languageOf(language) ?? "en"];
