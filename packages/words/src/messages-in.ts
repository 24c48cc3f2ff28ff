import { en } from "./en/index.ts";
import type { Messages } from "./messages.ts";

const LANGUAGES: Readonly<Record<string, Messages>> = { en };

/** The words a record was written with; English where its language is not known here. */
export const messagesIn = (language: string | undefined): Messages => LANGUAGES[language ?? "en"] ?? en;
