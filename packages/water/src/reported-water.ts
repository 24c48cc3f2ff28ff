import { known, missing, type Outcome, refused } from "@tapside/quantities";
import { CONSTITUENTS, type ConstituentId, type WaterAnalysis } from "./analysis.ts";
import { type AnalysisQuality, analysisQuality, type UnitSuspicion } from "./analysis-quality.ts";
import type { FieldReadings } from "./complete.ts";
import { hardnessFromIons } from "./hardness.ts";
import { type ReportedId, reportedAmount, reportedId } from "./reported-amount.ts";

/** One line of a report: a mean, a range, or both. */
export interface ReportLine {
  readonly name: string;
  readonly unit: string;
  readonly mean?: number;
  readonly low?: number;
  readonly high?: number;
}

/** A report's figures in our own units: the middle of each and its relative half spread as a standard uncertainty. */
export interface ReportedWater {
  readonly values: Readonly<Partial<Record<ReportedId, number>>>;
  /** Standard uncertainty relative to the value (pH, °C: absolute) that a range leaves; absent for single values. */
  readonly spread: Readonly<Partial<Record<ReportedId, number>>>;
  /** Lines that mean nothing here. */
  readonly unread: readonly string[];
}

const middleOf = ({ mean, low, high }: ReportLine) =>
  mean ?? (low !== undefined && high !== undefined ? 0.5 * (low + high) : (high ?? low));

/**
 * Reads the lines of a laboratory analysis or of a utility's yearly report. A range counts as evenly likely between its
 * ends (half width / √3); a mean beside it is the middle.
 *
 * Refused: "report-figure-below-zero", "report-range-reversed", "report-unit-unknown".
 */
export function readReport(lines: readonly ReportLine[]): Outcome<ReportedWater> {
  const values: Partial<Record<ReportedId, number>> = {};
  const spread: Partial<Record<ReportedId, number>> = {};
  const unread: string[] = [];
  for (const line of lines) {
    const id = reportedId(line.name);
    const middle = middleOf(line);
    if (!id || middle === undefined) {
      unread.push(line.name);
      continue;
    }
    if (line.low !== undefined && line.high !== undefined && line.low > line.high)
      return refused("report-range-reversed", { quantity: line.name });
    if (id !== "temperatureC" && Math.min(middle, line.low ?? middle) < 0)
      return refused("report-figure-below-zero", { quantity: line.name });
    const amount = reportedAmount(id, middle, line.unit, line.name);
    if (amount.kind !== "known") return amount;
    values[id] = amount.value;
    const half = 0.5 * ((line.high ?? middle) - (line.low ?? middle));
    if (half > 0)
      spread[id] = absolute(id) ? half / Math.sqrt(3) : half / Math.sqrt(3) / Math.max(middle, half);
  }
  return known({ values, spread, unread });
}

const absolute = (id: ReportedId) => id === "pH" || id === "temperatureC";

const READING_OF: readonly (readonly [ReportedId, keyof FieldReadings & string])[] = [
  ["temperatureC", "temperatureC"],
  ["pH", "pH"],
  ["Alk", "alkalinityMgPerLCaCO3"],
  ["hardness", "hardnessMgPerLCaCO3"],
  ["ec25", "ec25UsPerCm"],
  ["tds", "tdsMgPerL"],
];

/** The report as readings to complete a water from. */
export function readingsOfReport({ values, spread }: ReportedWater): FieldReadings {
  const ions: Partial<Record<ConstituentId, number>> = {};
  for (const id of CONSTITUENTS) if (values[id] !== undefined) ions[id] = values[id];
  const named = READING_OF.flatMap(([id, name]) => (values[id] === undefined ? [] : [[name, values[id]]]));
  const wide = [
    ...CONSTITUENTS.map((id) => [id, spread[id]] as const),
    ...READING_OF.map(([id, name]) => [name, spread[id]] as const),
  ].filter(([, sd]) => sd !== undefined);
  return { ...Object.fromEntries(named), ions, spread: Object.fromEntries(wide) };
}

/** A further slip that figures of the same report give away. */
export type ReportSuspicion =
  | UnitSuspicion
  | "hardness-in-grains-per-gallon"
  | "hardness-is-of-another-water"
  | "conductivity-in-another-unit"
  | "dissolved-solids-do-not-fit-conductivity";

/** What a report says about itself. */
export interface ReportQuality {
  /** Absent where an ion of weight was not reported. */
  readonly chargeImbalancePercent?: number;
  readonly chargeVerdict: "agrees" | "doubtful" | "cannot-tell";
  readonly calculatedEc25UsPerCm?: number;
  readonly conductivityRatio?: number;
  readonly conductivityVerdict: "agrees" | "doubtful" | "cannot-tell";
  readonly suspicions: readonly ReportSuspicion[];
  /** What is missing for the whole judgement. */
  readonly missing: readonly ReportedId[];
}

/** Percent within which a charge balance, and ratio within which a conductivity agrees (laboratory habit, common practice, no source). */
const CHARGE_AGREES = 5;
const CONDUCTIVITY_AGREES = 0.1;
const NEEDED = ["Ca", "Mg", "Na", "Cl", "SO4", "Alk"] as const;

const near = (a: number, b: number, share: number) => Math.abs(a / b - 1) <= share;

function hardnessSlips({ Ca, Mg, hardness }: ReportedWater["values"]): ReportSuspicion[] {
  if (Ca === undefined || Mg === undefined || hardness === undefined || hardness <= 0) return [];
  const fromIons = hardnessFromIons(Ca, Mg);
  if (fromIons <= 0 || near(hardness, fromIons, 0.1)) return [];
  if (near(hardness * 17.118, fromIons, 0.08)) return ["hardness-in-grains-per-gallon"];
  if (near(hardness, Ca + 4.118 * Mg, 0.06)) return ["calcium-given-as-CaCO3"];
  return near(hardness, Ca + Mg, 0.06)
    ? ["calcium-given-as-CaCO3", "magnesium-given-as-CaCO3"]
    : ["hardness-is-of-another-water"];
}

function solidsSlips({ ec25, tds }: ReportedWater["values"]): ReportSuspicion[] {
  if (!(ec25! > 0) || !(tds! > 0)) return [];
  if (near(tds! / ec25!, 600, 0.4)) return ["conductivity-in-another-unit"];
  return tds! / ec25! < 0.4 || tds! / ec25! > 0.95 ? ["dissolved-solids-do-not-fit-conductivity"] : [];
}

function judged(quality: AnalysisQuality): Pick<ReportQuality, "chargeVerdict" | "conductivityVerdict"> {
  const ratio = quality.conductivityRatio;
  return {
    chargeVerdict: Math.abs(quality.chargeImbalancePercent) <= CHARGE_AGREES ? "agrees" : "doubtful",
    conductivityVerdict:
      ratio === undefined
        ? "cannot-tell"
        : Math.abs(ratio - 1) <= CONDUCTIVITY_AGREES
          ? "agrees"
          : "doubtful",
  };
}

/**
 * Charge balance, agreement with conductivity, and unit slips suspected from how the report's own figures hang
 * together. Questions to ask of the report, never corrections. pH and temperature that are not there count as 7.5 (5.6
 * where no alkalinity was found) and 15 °C: they hardly move either balance.
 *
 * Source: within 5 % of charge and 10 % of conductivity is laboratory habit (common practice, no source).
 * Range: as `speciate`. Error: potassium and nitrate not reported count as none.
 */
export function reportQuality({ values }: ReportedWater): Outcome<ReportQuality> {
  const absent = NEEDED.filter((id) => values[id] === undefined);
  const own = [...hardnessSlips(values), ...solidsSlips(values)];
  if (absent.length === NEEDED.length && values.ec25 === undefined && values.hardness === undefined)
    return missing(...NEEDED);
  if (absent.length > 0)
    return known({
      chargeVerdict: "cannot-tell",
      conductivityVerdict: "cannot-tell",
      suspicions: own,
      missing: absent,
    });
  const quality = analysisQuality(wholeAnalysis(values), values.ec25);
  if (quality.kind !== "known") return quality;
  const { suspicions, ...rest } = quality.value;
  return known({
    ...rest,
    ...judged(quality.value),
    suspicions: [...new Set([...suspicions, ...own])],
    missing: values.ec25 === undefined ? ["ec25"] : [],
  });
}

function wholeAnalysis(values: ReportedWater["values"]): WaterAnalysis {
  const ions: Partial<Record<ConstituentId, number>> = {};
  for (const id of CONSTITUENTS) ions[id] = values[id] ?? 0;
  const alkalinityMgPerLCaCO3 = values.Alk ?? 0;
  return {
    temperatureC: values.temperatureC ?? 15,
    pH: values.pH ?? (alkalinityMgPerLCaCO3 > 0 ? 7.5 : 5.6),
    alkalinityMgPerLCaCO3,
    ions,
  };
}
