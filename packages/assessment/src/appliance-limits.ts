import { known, missing, type Outcome } from "@tapside/quantities";
import type { Phase, UnitFile } from "@tapside/records";
import type { Figure, Finding } from "./assessment.ts";
import { amountOf, inUnit, type PhaseReadings, scaleOf, usable } from "./internal/amounts.ts";
import { convertTds, scaleDoubt } from "./internal/tds-scale.ts";
import { judge } from "./judge.ts";

type KeptLimit = UnitFile["appliances"][number]["limits"][number];

/** Delivered water against every limit of every appliance on the unit. */
export function applianceLimits(readings: PhaseReadings, phase: Phase, file: UnitFile): readonly Finding[] {
  return file.appliances.flatMap((appliance) =>
    appliance.limits
      .filter((limit) => isNumber(limit.low) || isNumber(limit.high))
      .map((limit) => judgeLimit(readings, phase, file, appliance.name ?? "", limit)),
  );
}

const isNumber = (x: number | undefined): x is number => typeof x === "number" && Number.isFinite(x);

function judgeLimit(
  readings: PhaseReadings,
  phase: Phase,
  file: UnitFile,
  appliance: string,
  limit: KeptLimit,
): Finding {
  const quantity = limit.quantity ?? "tds";
  const detail = {
    quantity,
    appliance,
    ...(limit.source && { label: limit.source }),
    ...(limit.sourceDate && { date: limit.sourceDate }),
  };
  const shownLimit = {
    ...(isNumber(limit.low) && { low: limit.low }),
    ...(isNumber(limit.high) && { high: limit.high }),
    unit: limit.unit ?? (quantity === "tds" ? "ppm" : ""),
    ...(quantity === "tds" && { scale: limit.scale ?? "NaCl" }),
    source: "applianceLabel",
    detail,
  };
  const id = quantity === "tds" ? "delivered" : `delivered:${quantity}`;
  const finding = judge(id, phase, figureFor(readings, file, limit), shownLimit, 85, { detail });
  return belowBySmallest(finding, readings, quantity);
}

/** A test that shows nothing down to a step at or below the limit is within it. */
function belowBySmallest(finding: Finding, readings: PhaseReadings, quantity: string): Finding {
  const reading = readings.chlorineAfter;
  const high = finding.limit?.high;
  if (quantity !== "chlorine" || !reading?.notDetected || high === undefined || !(reading.value! <= high))
    return finding;
  return { ...finding, verdict: "within", distance: -1, rule: "not-detected" };
}

function figureFor(readings: PhaseReadings, file: UnitFile, limit: KeptLimit): Outcome<Figure> {
  if (limit.quantity === "tds" || limit.quantity === undefined) return delivered(readings, file, limit);
  if (limit.quantity === "chlorine") return chlorine(readings, file);
  return missing(`delivered.${limit.quantity}`);
}

function delivered(readings: PhaseReadings, file: UnitFile, limit: KeptLimit): Outcome<Figure> {
  const reading = readings.deliveredTds;
  const nacl = amountOf("deliveredTds", readings, file);
  if (!usable(reading) || nacl.kind !== "known") return missing("deliveredTds");
  const scale = limit.scale ?? "NaCl";
  const value = convertTds(nacl.value.value, "NaCl", scale);
  const u = nacl.value.value > 0 ? (nacl.value.u * value) / nacl.value.value : nacl.value.u;
  const converted = reading.unit !== "ppm" || scaleOf(reading, file) !== scale;
  const doubt = converted ? scaleDoubt(nacl.value.value) * value : 0;
  return known({ value, u: Math.hypot(u, doubt), unit: "ppm", scale, ...(converted && { converted }) });
}

/** Delivered water has passed the same carbon. */
function chlorine(readings: PhaseReadings, file: UnitFile): Outcome<Figure> {
  const after = amountOf("chlorineAfter", readings, file);
  if (after.kind !== "known") return after;
  const value = inUnit(after.value, "mg/L", "mg/L");
  return value.kind === "known" ? known({ ...value.value, unit: "mg/L" }) : value;
}
