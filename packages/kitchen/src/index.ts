export { askedInSteps, type DayAtTank, dayAtTank, fullTankState, type TankState } from "./day-at-tank.ts";
export { drawnDays } from "./drawn-days.ts";
export { evenlyBetween, type HourShares, restaurantWeekday } from "./hour-shares.ts";
export {
  type Band,
  DAYS_ALLOWED_SHORT,
  type KeepsUp,
  type KeepsUpOptions,
  keepsUp,
  MADE_RELATIVE,
} from "./keeps-up.ts";
export {
  type Kitchen,
  leastRemedy,
  leastTankL,
  REMEDY_IDS,
  type Remedy,
  type RemedyId,
  remedies,
  remedy,
} from "./sizing.ts";
export { type Situation, type TankTable, tankTable } from "./tank-table.ts";
export { askedOf, LITRES_RELATIVE, litresByHour, type Use } from "./use.ts";
