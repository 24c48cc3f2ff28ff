import { callEs } from "../call/words.es.ts";
import { foundEs } from "../found/words.es.ts";
import { kitchenDayEs } from "../kitchen-day/words.es.ts";
import { tryEs } from "../try/words.es.ts";
import { kindEs } from "../visit/kind-words.es.ts";
import { procedureEs } from "../visit/procedure-words.es.ts";
import { visitEs } from "../visit/words.es.ts";
import type { Packs } from "./packs.ts";

export const visitPackEs: Packs["visit"] = {
  visit: visitEs,
  kinds: kindEs,
  procedures: procedureEs,
  tryOut: tryEs,
  kitchenDay: kitchenDayEs,
  call: callEs,
  found: foundEs,
};
