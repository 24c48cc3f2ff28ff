export {
  answerLeftOpen,
  applianceMake,
  type LeftOpen,
  possibleMakes,
  waterLimitsOf,
} from "./appliance-water.ts";
export { assess } from "./assess.ts";
export * from "./assessment.ts";
export { atMostByConductivity } from "./at-most-by-conductivity.ts";
export { dueItems, USUAL_MONTHS } from "./due.ts";
export { expectedToday } from "./expected.ts";
export { feedHistory } from "./feed-history.ts";
export { feedWaterReadings, givenNames } from "./feed-water.ts";
export { boosterOf, mixUnknown } from "./from-records.ts";
export { lifeOnStrip, type PlacedLifePoint } from "./life-on-strip.ts";
export { OFFICE_DEFAULTS, type Rule, rulesOf } from "./limits.ts";
export { productWater, USUAL_PASSAGE } from "./product-water.ts";
export { readsAsExpected } from "./reads-as-expected.ts";
export { RULES_VERSION } from "./rules-version.ts";
export { elementAsNew, type UnitAsRead, unitAsRead } from "./unit-as-read.ts";
export {
  CURVE_C,
  type JudgedConstituent,
  judgeWater,
  type WaterJudged,
  waterAtOnce,
  waterSamples,
} from "./water-judged.ts";
