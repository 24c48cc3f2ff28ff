export { convert, converted, UNITS } from "./convert.ts";
export { type Decision, type DecisionRule, decide, type Limits } from "./decide.ts";
export { type FormattedUncertain, formatUncertain } from "./format-uncertain.ts";
export { type Accuracy, instrumentUncertainty, type ReadingUncertainty } from "./instrument-uncertainty.ts";
export {
  allKnown,
  type Known,
  known,
  type Missing,
  mapOutcome,
  missing,
  type Outcome,
  type Refused,
  refused,
} from "./outcome.ts";
export { parseReading, type TypedNumber } from "./parse-reading.ts";
export { percentReduction, type ReductionReadings } from "./percent-reduction.ts";
export { type Correlation, propagate } from "./propagate.ts";
export { propagateTogether, type UncertainTogether } from "./propagate-together.ts";
export { quantile } from "./quantile.ts";
export type { Uncertain } from "./uncertain.ts";
