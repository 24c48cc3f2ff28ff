import { en } from "@tapside/words/en";
import { timerEn } from "../timers/words.en.ts";
import { waterPageEn } from "../water/words.en.ts";
import { bookEn } from "./book.en.ts";
import { dateEn } from "./dates.en.ts";
import { officeEn } from "./office.en.ts";
import { setupEn } from "./setup.en.ts";

/** What the screens of the book say, and the sentences shared with paper. */
export const firstPackEn = {
  messages: en,
  book: bookEn,
  office: officeEn,
  setup: setupEn,
  dates: dateEn,
  timers: timerEn,
  water: waterPageEn,
};
