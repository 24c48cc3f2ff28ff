import { known, mapOutcome, refused } from "@tapside/quantities";
import { filling, operatingPoint } from "@tapside/reverse-osmosis";
import { all } from "./reader.ts";
import { type RowVerb, rowVerb } from "./row-verb.ts";
import { unitFitVerb } from "./unit-fit.ts";
import { unitIonsVerb } from "./unit-ions.ts";
import { unitQuestionsVerb } from "./unit-questions.ts";
import { conditionsOfRow, emptyTankOfRow, unitOfRow } from "./unit-row.ts";
import { unitStandbyVerb } from "./unit-standby.ts";

const operatingPointVerb = rowVerb({
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
  reads: all({ unit: unitOfRow, at: conditionsOfRow }),
  answer: ({ unit, at }) => {
    const point = operatingPoint(unit, at);
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
});

const fillingVerb = rowVerb({
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
  reads: all({ unit: unitOfRow, at: emptyTankOfRow }),
  answer: ({ unit, at }) =>
    mapOutcome(filling(unit, at, { panels: 2 }), (filled) =>
      known({
        fill_time_h: filled.hours,
        stored_L: filled.storedL,
        mean_permeate_mg_L: filled.meanMgPerL,
        drain_L: filled.drainL,
        efficiency: filled.efficiency,
        recovery_at_start: filled.recoveryAtStart,
        shutoff_kPa_gauge: filled.shutOffKPaGauge,
      }),
    ),
});

/** `tapside unit …`: one unit a row, input columns as in `reference/small-ro-unit`. */
export const unitVerbs: Readonly<Record<string, RowVerb>> = {
  unit: operatingPointVerb,
  "unit fill": fillingVerb,
  "unit fit": unitFitVerb,
  "unit ions": unitIonsVerb,
  "unit standby": unitStandbyVerb,
  "unit questions": unitQuestionsVerb,
};
