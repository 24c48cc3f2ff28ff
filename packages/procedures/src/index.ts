export { type BypassSoFar, bypassSoFar } from "./bypass-so-far.ts";
export { type CarbonUse, carbonDays, carbonLitres } from "./carbon-litres.ts";
export { type ClockNotice, type ClockSight, clockAcrossRestart, clockNotice } from "./clock.ts";
export { isStepByStep, type ProcedureStep, procedureOf, type StepAsks } from "./procedures.ts";
export { type DoseRequest, sanitiserDoseMl } from "./sanitiser-dose.ts";
export { type ScaldTime, scaldTime } from "./scald-time.ts";
export { scaleAtMostG, type UntreatedWater } from "./scale-at-most.ts";
export { steamAtMostKgPerH } from "./steam-from-heat.ts";
export { type TimerState, timerState } from "./timer-state.ts";
