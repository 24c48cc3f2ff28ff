import { converted } from "@tapside/quantities";
import type { Context } from "./assessment.ts";

/** A limit with where it comes from. `source`: "commonPractice", "officeRule", "applianceLabel", "elementLabel". */
export interface Rule {
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
  readonly source: string;
}

/** Default rules of the office; each may be set. */
export const OFFICE_DEFAULTS = {
  filterDropPsi: 4,
  flowRatio: 0.8,
  flowRatioHigh: 1.2,
  saltRatio: 1.2,
} as const;

const psi = (value: number, unit: string) => converted(value, "psi", unit);

/**
 * The rules a visit is judged by, in the technician's pressure unit. 60–100 psi feed, 8–10 psi air, 75 % reduction, 100 ppm and 0.1 mg/L of
 * chlorine are common practice without a source; the rest are office rules.
 */
export function rulesOf(context: Context) {
  const { settings } = context;
  const unit = settings.pressureUnit ?? "psi";
  const drop = settings.filterDropLimitKPa;
  return {
    feedPressure: { low: psi(60, unit), high: psi(100, unit), unit, source: "commonPractice" },
    airCharge: { low: psi(8, unit), high: psi(10, unit), unit, source: "commonPractice" },
    filterDrop: {
      high: drop !== undefined ? converted(drop, "kPa", unit) : psi(OFFICE_DEFAULTS.filterDropPsi, unit),
      unit,
      source: "officeRule",
    },
    flowRatio: {
      low: settings.flowRatioLimit ?? OFFICE_DEFAULTS.flowRatio,
      high: OFFICE_DEFAULTS.flowRatioHigh,
      unit: "of new",
      source: "officeRule",
    },
    saltRatio: {
      high: settings.saltRatioLimit ?? OFFICE_DEFAULTS.saltRatio,
      unit: "× new",
      source: "officeRule",
    },
    chlorineAfter: { high: 0.1, unit: "mg/L", source: "commonPractice" },
    percentReduction: { low: 75, unit: "%", source: "commonPractice" },
    optionalFeedTds: { high: 100, unit: "ppm", source: "commonPractice" },
    silentDrain: { high: 0.01, unit: "L/min", source: "commonPractice" },
    deliveredOverMembrane: { high: 1.8, unit: "× to waste", source: "commonPractice" },
  } as const satisfies Record<string, Rule>;
}
