import { known, type Outcome, refused } from "@tapside/quantities";
import { filling, operatingPoint } from "@tapside/reverse-osmosis";
import type { RowVerb } from "./row-verb.ts";
import { unitFitVerb } from "./unit-fit.ts";
import { unitIonsVerb } from "./unit-ions.ts";
import { unitQuestionsVerb } from "./unit-questions.ts";
import { conditionsOfRow, unitOfRow } from "./unit-row.ts";
import { unitStandbyVerb } from "./unit-standby.ts";

const operatingPointVerb: RowVerb = {
  summary: "one operating point of a small unit a row: flows, dissolved solids, recovery, rejection",
  columns: [
    "feed_L_h",
    "permeate_L_h",
    "permeate_mg_L",
    "concentrate_L_h",
    "concentrate_mg_L",
    "recovery",
    "rejection_percent",
  ],
  row: (input) => {
    const unit = unitOfRow(input);
    if (unit.kind !== "known") return unit;
    const conditions = conditionsOfRow(input);
    if (conditions.kind !== "known") return conditions;
    const point = operatingPoint(unit.value, conditions.value);
    if (point.kind === "refused") return point;
    if (point.kind !== "flowing") return refused(point.kind, { drain_L_h: point.concentrateLPerH });
    return known({
      feed_L_h: point.feedLPerH,
      permeate_L_h: point.permeateLPerH,
      permeate_mg_L: point.permeateMgPerL,
      concentrate_L_h: point.concentrateLPerH,
      concentrate_mg_L: point.concentrateMgPerL,
      recovery: point.recovery,
      rejection_percent: point.rejection * 100,
    });
  },
};

function fillingRow(input: Readonly<Record<string, string>>): Outcome<Readonly<Record<string, number>>> {
  const unit = unitOfRow(input);
  if (unit.kind !== "known") return unit;
  const conditions = conditionsOfRow({ ...input, tank_pressure_kPa_gauge: "0" });
  if (conditions.kind !== "known") return conditions;
  const filled = filling(unit.value, conditions.value, { panels: 2 });
  if (filled.kind !== "known") return filled;
  const { hours, storedL, meanMgPerL, drainL, efficiency, recoveryAtStart, shutOffKPaGauge } = filled.value;
  return known({
    fill_time_h: hours,
    stored_L: storedL,
    mean_permeate_mg_L: meanMgPerL,
    drain_L: drainL,
    efficiency,
    recovery_at_start: recoveryAtStart,
    shutoff_kPa_gauge: shutOffKPaGauge,
  });
}

const fillingVerb: RowVerb = {
  summary: "one filling of the tank a row: hours, litres, dissolved solids, drain, efficiency",
  columns: [
    "fill_time_h",
    "stored_L",
    "mean_permeate_mg_L",
    "drain_L",
    "efficiency",
    "recovery_at_start",
    "shutoff_kPa_gauge",
  ],
  row: fillingRow,
};

/** `tapside unit …`: one unit a row, input columns as in `reference/small-ro-unit`. */
export const unitVerbs: Readonly<Record<string, RowVerb>> = {
  unit: operatingPointVerb,
  "unit fill": fillingVerb,
  "unit fit": unitFitVerb,
  "unit ions": unitIonsVerb,
  "unit standby": unitStandbyVerb,
  "unit questions": unitQuestionsVerb,
};
