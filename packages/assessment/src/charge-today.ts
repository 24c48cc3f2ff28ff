import { missing, type Outcome, type Uncertain } from "@tapside/quantities";
import { chargeSet, type UnitFile } from "@tapside/records";
import { amountOf } from "./internal/amounts.ts";
import type { Visit } from "./internal/parts-in-service.ts";
import { phaseReadings, visitsUpTo } from "./internal/phase-readings.ts";
import { airChargeKPa, bestChargeKPa } from "./tank-figures.ts";

/** Air charge where none was ever found and no appliance says what it needs, kPa gauge: common practice, no source. */
export const USUAL_CHARGE_KPA = 50;
/** A charge nobody read, kPa, one standard deviation: tanks are left at 4 to 20 psi. Common practice, no source. */
export const UNREAD_CHARGE_U_KPA = 35;
/** Air lost or set by others since it was read, kPa, one standard deviation: common practice, no source. */
export const CHARGE_WANDERS_KPA = 10;

/** The air charge to count with at a visit: read in it, else as last left or found, else as the appliances need it, each with its own uncertainty. */
export function chargeToday(file: UnitFile, visit: Visit): Uncertain {
  const now = airChargeKPa(phaseReadings(visit, "asFound"), file);
  if (now.kind === "known") return now.value;
  for (const earlier of visitsUpTo(file, visit).slice(0, -1).reverse()) {
    const then = leftAt(file, earlier);
    if (then === "notWritten") break;
    if (then.kind === "known")
      return { value: then.value.value, u: Math.hypot(then.value.u, CHARGE_WANDERS_KPA) };
  }
  const needed = bestChargeKPa(file, missing("tankFullPressure"));
  return { value: needed.kind === "known" ? needed.value : USUAL_CHARGE_KPA, u: UNREAD_CHARGE_U_KPA };
}

/** What a visit left in the tank: read as left, set, else found and not touched. */
function leftAt(file: UnitFile, visit: Visit): Outcome<Uncertain> | "notWritten" {
  const left = airChargeKPa(phaseReadings(visit, "asLeft"), file);
  if (left.kind === "known") return left;
  const set = chargeSet(visit);
  if (set === "notWritten") return set;
  return set
    ? amountOf("airCharge", { airCharge: set }, file)
    : airChargeKPa(phaseReadings(visit, "asFound"), file);
}
