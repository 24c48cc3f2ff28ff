import { callEn } from "../call/words.en.ts";
import { foundEn } from "../found/words.en.ts";
import { kitchenDayEn } from "../kitchen-day/words.en.ts";
import { tryEn } from "../try/words.en.ts";
import { kindEn } from "../visit/kind-words.en.ts";
import { procedureEn } from "../visit/procedure-words.en.ts";
import { visitEn } from "../visit/words.en.ts";

/** What a unit and a visit say besides. */
export const visitPackEn = {
  visit: visitEn,
  kinds: kindEn,
  procedures: procedureEn,
  tryOut: tryEn,
  kitchenDay: kitchenDayEn,
  call: callEn,
  found: foundEn,
};
