import { es } from "@tapside/words/es";
import { timerEs } from "../timers/words.es.ts";
import { waterPageEs } from "../water/words.es.ts";
import { bookEs } from "./book.es.ts";
import { dateEs } from "./dates.es.ts";
import { officeEs } from "./office.es.ts";
import type { Packs } from "./packs.ts";
import { setupEs } from "./setup.es.ts";

export const firstPackEs: Packs["first"] = {
  messages: es,
  book: bookEs,
  office: officeEs,
  setup: setupEs,
  dates: dateEs,
  timers: timerEs,
  water: waterPageEs,
};
