import type { RowVerb } from "./row-verb.ts";
import { waterBoilVerb } from "./water-boil.ts";
import { waterCompleteVerb } from "./water-complete.ts";
import { waterDegasVerb } from "./water-degas.ts";
import { waterHeatVerb } from "./water-heat.ts";
import { waterIndicesVerb } from "./water-indices.ts";
import { waterMixVerb } from "./water-mix.ts";
import { waterOpenVerb } from "./water-open.ts";
import { waterSplitVerb } from "./water-split.ts";
import { waterSuitsVerb } from "./water-suits.ts";

/** Verbs about water by the words that call them. */
export const waterVerbs: Readonly<Record<string, RowVerb>> = {
  water: waterOpenVerb,
  "water heat": waterHeatVerb,
  "water mix": waterMixVerb,
  "water degas": waterDegasVerb,
  "water split": waterSplitVerb,
  "water boil": waterBoilVerb,
  "water indices": waterIndicesVerb,
  "water complete": waterCompleteVerb,
  "water suits": waterSuitsVerb,
};
