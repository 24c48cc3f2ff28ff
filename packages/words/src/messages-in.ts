import { en } from "./en/index.ts";
import { es } from "./es/index.ts";
import { type Language, languageOf } from "./language.ts";
import type { Messages } from "./messages.ts";

const MESSAGES: Readonly<Record<Language, Messages>> = { en, es };

/** The words a record was written with; English where its language is not known here. */
export const messagesIn = (language: string | undefined): Messages => MESSAGES[languageOf(language) ?? "en"];
