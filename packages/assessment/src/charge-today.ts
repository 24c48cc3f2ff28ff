import { converted, type Uncertain } from "@tapside/quantities";
import type { UnitFile } from "@tapside/records";
import type { Visit } from "./internal/parts-in-service.ts";
import { phaseReadings, visitsUpTo } from "./internal/phase-readings.ts";
import { airChargeKPa, applianceMinimumKPa } from "./tank-figures.ts";

/** Air charge where none was ever found and no appliance says what it needs, kPa gauge: common practice, no source. */
export const USUAL_CHARGE_KPA = 50;
/** The best charge lies this far below the appliances' minimum: common practice, 2 psi. */
const BELOW_MINIMUM_KPA = converted(2, "psi", "kPa");
/** A charge nobody read, kPa, one standard deviation: tanks are left at 4 to 20 psi. Common practice, no source. */
export const UNREAD_CHARGE_U_KPA = 35;
/** Air lost or set by others since it was read, kPa, one standard deviation: common practice, no source. */
export const CHARGE_WANDERS_KPA = 10;
/** A charge set with a hand pump and its gauge. */
const SET_U_KPA = 5;

/** The air charge to count with at a visit: read in it, else as last left or found, else as the appliances need it, each with its own uncertainty. */
export function chargeToday(file: UnitFile, visit: Visit): Uncertain {
  const now = airChargeKPa(phaseReadings(visit, "asFound"), file);
  if (now.kind === "known") return now.value;
  for (const earlier of visitsUpTo(file, visit).slice(0, -1).reverse()) {
    const then = leftAt(file, earlier);
    if (then) return { value: then.value, u: Math.hypot(then.u, CHARGE_WANDERS_KPA) };
  }
  const minimum = applianceMinimumKPa(file);
  const value = minimum.kind === "known" ? Math.max(0, minimum.value - BELOW_MINIMUM_KPA) : USUAL_CHARGE_KPA;
  return { value, u: UNREAD_CHARGE_U_KPA };
}

/** What an earlier visit left in the tank: read as left, set, else found and not touched. */
function leftAt(file: UnitFile, visit: Visit): Uncertain | undefined {
  const left = airChargeKPa(phaseReadings(visit, "asLeft"), file);
  if (left.kind === "known") return left.value;
  const { state, value, unit } = visit.work.setAirCharge ?? {};
  if (state === "done") {
    if (value === undefined || (unit !== "psi" && unit !== "kPa" && unit !== "bar")) return undefined;
    return { value: converted(value, unit, "kPa"), u: SET_U_KPA };
  }
  const found = airChargeKPa(phaseReadings(visit, "asFound"), file);
  return found.kind === "known" ? found.value : undefined;
}
