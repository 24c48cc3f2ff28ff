export { assess } from "./assess.ts";
export * from "./assessment.ts";
export { atMostByConductivity } from "./at-most-by-conductivity.ts";
export { dueItems, USUAL_MONTHS } from "./due.ts";
export { lifeOnStrip, type PlacedLifePoint } from "./life-on-strip.ts";
export { OFFICE_DEFAULTS, type Rule, rulesOf } from "./limits.ts";
export { elementAsNew, type UnitAsRead, unitAsRead } from "./unit-as-read.ts";
