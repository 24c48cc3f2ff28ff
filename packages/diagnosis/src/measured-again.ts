import type { CauseId } from "./causes.ts";
import { REPAIRS } from "./repairs.ts";
import { type Readings, SIGN_IDS, SIGNS, type SignId } from "./signs.ts";
import { TESTS } from "./test-catalogue.ts";

/** Signs of the incoming water: a repair of the unit leaves them as they were. */
const OF_THE_WATER: readonly SignId[] = [
  "staticPressure",
  "temperature",
  "feedTds",
  "chlorineBefore",
  "tdsStandard",
  "gaugeCheck",
  "dailyLitres",
];

/** Signs that have to be read anew after a repair before its effect may be believed. */
export const mustMeasureAgain = (cause: CauseId): readonly SignId[] => [
  ...new Set(REPAIRS[cause].measureAgain.flatMap((test) => TESTS[test].signs)),
];

/** The readings that still hold after repairs, with what was measured again. What was read before of the unit itself is dropped. */
export function measuredAgain(before: Readings, repaired: readonly CauseId[], again: Readings): Readings {
  const changes = repaired.some((cause) => REPAIRS[cause].parts.length > 0 || REPAIRS[cause].minutes > 0);
  const kept = SIGN_IDS.filter(
    (sign) => OF_THE_WATER.includes(sign) || (!changes && SIGNS[sign].kind !== "look"),
  );
  return {
    ...Object.fromEntries(kept.flatMap((sign) => (before[sign] === undefined ? [] : [[sign, before[sign]]]))),
    ...again,
  };
}
