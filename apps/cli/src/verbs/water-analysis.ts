import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import {
  CONSTITUENTS,
  type ConstituentId,
  completeWater,
  LABORATORY_UNCERTAINTY,
  type ReportedWater,
  type ReportInTable,
  type ReportQuality,
  readingsOfReport,
  readReport,
  reportQuality,
  reportsOfTable,
  seededUniform,
  type WaterAnalysis,
} from "@tapside/water";
import type { CommandVerb } from "../command-verb.ts";
import { runGroups } from "./group-runner.ts";
import { intervalCells, intervalColumns } from "./interval-cells.ts";
import { shown } from "./water-input.ts";

const COLUMNS = [
  "bottle",
  "place",
  "charge_imbalance_pct",
  "charge",
  "EC25_calculated",
  "EC_ratio",
  "conductivity",
  "suspected",
  "missing",
  ...CONSTITUENTS.flatMap((id) => intervalColumns(`${id}_mg`)),
];

function qualityCells(quality: ReportQuality): Record<string, string | number> {
  return {
    charge_imbalance_pct: shown(quality.chargeImbalancePercent ?? Number.NaN),
    charge: quality.chargeVerdict,
    EC25_calculated: shown(quality.calculatedEc25UsPerCm ?? Number.NaN),
    EC_ratio: shown(quality.conductivityRatio ?? Number.NaN),
    conductivity: quality.conductivityVerdict,
    suspected: quality.suspicions.join(" "),
    missing: quality.missing.join(" "),
  };
}

function completed(report: ReportedWater): Outcome<Record<string, string | number>> {
  const readings = readingsOfReport(report);
  const outcome = completeWater(readings, {
    random: seededUniform(90),
    samples: 400,
    uncertainty: LABORATORY_UNCERTAINTY,
  });
  const ofIon = (id: ConstituentId, samples: readonly WaterAnalysis[]) =>
    intervalCells(
      `${id}_mg`,
      samples.map((water) => water.ions[id] ?? 0),
    );
  return mapOutcome(outcome, (samples) =>
    known(Object.assign({}, ...CONSTITUENTS.map((id) => ofIon(id, samples)))),
  );
}

const isDoubted = ({ chargeVerdict, conductivityVerdict, suspicions }: ReportQuality) =>
  suspicions.length > 0 || chargeVerdict === "doubtful" || conductivityVerdict === "doubtful";

/** Figures that contradict each other are not completed; where the report is doubted already, that doubt is the answer. */
const judged = ({ bottle, place, lines }: ReportInTable): Outcome<Record<string, string | number>> =>
  mapOutcome(readReport(lines), (water) =>
    mapOutcome(reportQuality(water), (quality) => {
      const whole = completed(water);
      const cells = whole.kind !== "known" && isDoubted(quality) ? known({}) : whole;
      return mapOutcome(cells, (given) => known({ bottle, place, ...qualityCells(quality), ...given }));
    }),
  );

/** Rows of other things than water's own figures, and empty ones, leave the rest as it is. */
const BESIDE: ReadonlySet<string> = new Set(["report-quantity-unknown", "report-figure-missing"]);

/** A report with a figure that cannot be is not judged by the rest of it. */
const whole = (report: ReportInTable): Outcome<Record<string, string | number>> => {
  const bad = report.refused.find(({ code }) => !BESIDE.has(code));
  return bad ? refused(bad.code, bad.detail) : judged(report);
};

/** A laboratory's analysis or a utility's yearly report judged, and completed where it is silent. */
export const waterAnalysisVerb: CommandVerb = {
  summary:
    "a laboratory analysis or a utility's yearly report: does it agree with itself, which units slipped",
  ways: ["IN.csv [-o OUT.csv] [--json]"],
  notes: [
    "a line a figure (quantity, mean, low, high, unit) or a column a figure (Ca_mg …); bottle and place as columns",
  ],
  examples: [{ args: ["water", "analysis", "examples/larkmoor-water-report.csv"], prints: "agrees" }],
  run: runGroups("water analysis", {
    columns: COLUMNS,
    groups: (table) =>
      reportsOfTable(table).map((report) => ({
        name: report.bottle || `row ${report.row}`,
        outcome: whole(report),
      })),
    beside: (table) =>
      reportsOfTable(table).flatMap((report) => report.refused.filter(({ code }) => BESIDE.has(code))),
  }),
};
