import { known, missing, type Outcome } from "@tapside/quantities";
import type { LimitQuantity, Phase, SlotId, UnitFile } from "@tapside/records";
import type { Figure, Finding } from "./assessment.ts";
import { atMostByConductivity } from "./at-most-by-conductivity.ts";
import { amountOf, inUnit, type PhaseReadings, scaleOf, usable } from "./internal/amounts.ts";
import { decimalsRead } from "./internal/decimals-read.ts";
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
  return boundBySolids(belowBySmallest(finding, readings, quantity), readings, file, quantity);
}

/** A test that shows nothing down to a step at or below the limit is within it. */
function belowBySmallest(finding: Finding, readings: PhaseReadings, quantity: LimitQuantity): Finding {
  const slot = slotFor(readings, quantity);
  const reading = readings[slot];
  const high = finding.limit?.high;
  if (!usable(reading) || !reading.notDetected || high === undefined || finding.limit?.low !== undefined)
    return finding;
  const step = inUnit({ value: reading.value, u: 0 }, reading.unit, finding.limit?.unit || reading.unit);
  if (step.kind !== "known" || !(step.value.value <= high)) return finding;
  return { ...finding, verdict: "within", distance: -1, rule: "not-detected" };
}

/** What was not measured is within all the same when the water's conductivity leaves no room for that much of it. */
function boundBySolids(
  finding: Finding,
  readings: PhaseReadings,
  file: UnitFile,
  quantity: LimitQuantity,
): Finding {
  const nacl = amountOf("deliveredTds", readings, file);
  const { high, low, unit } = finding.limit ?? {};
  if (finding.verdict !== "cannotTell" || nacl.kind !== "known" || high === undefined || low !== undefined)
    return finding;
  const most = atMostByConductivity(quantity, convertTds(nacl.value.value + 2 * nacl.value.u, "NaCl", "EC"));
  if (most === undefined) return finding;
  const shown = inUnit({ value: most, u: 0 }, BASE_UNIT[quantity] ?? "mg/L", unit || "mg/L");
  if (shown.kind !== "known" || !(shown.value.value <= high)) return finding;
  const { missing: _, ...rest } = finding;
  return {
    ...rest,
    verdict: "within",
    distance: -1,
    rule: "at-most-by-conductivity",
    detail: { ...finding.limit?.detail, why: "conductivity", atMost: shown.value.value },
  };
}

const BASE_UNIT: Readonly<Partial<Record<LimitQuantity, string>>> = {
  hardness: "mg/L CaCO3",
  alkalinity: "mg/L CaCO3",
};

const DELIVERED: Readonly<Record<LimitQuantity, SlotId>> = {
  tds: "deliveredTds",
  hardness: "deliveredHardness",
  alkalinity: "deliveredAlkalinity",
  chloride: "deliveredChloride",
  chlorine: "deliveredChlorine",
  silica: "deliveredSilica",
  pH: "deliveredPh",
};

/** Where a limited thing is read. Delivered water has passed the same carbon: without a test of its own, that one counts. */
const slotFor = (readings: PhaseReadings, quantity: LimitQuantity): SlotId =>
  quantity === "chlorine" && !usable(readings.deliveredChlorine) ? "chlorineAfter" : DELIVERED[quantity];

function figureFor(readings: PhaseReadings, file: UnitFile, limit: KeptLimit): Outcome<Figure> {
  if (limit.quantity === "tds" || limit.quantity === undefined) return delivered(readings, file, limit);
  const amount = amountOf(slotFor(readings, limit.quantity), readings, file);
  if (amount.kind !== "known") return amount;
  if (limit.quantity === "pH") return known({ ...amount.value, unit: "pH" });
  const base = BASE_UNIT[limit.quantity] ?? "mg/L";
  const unit = limit.unit || base;
  const value = inUnit(amount.value, base, unit);
  return value.kind === "known" ? known({ ...value.value, unit }) : value;
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
  return known({
    value,
    u: Math.hypot(u, doubt),
    unit: "ppm",
    scale,
    ...(converted ? { converted } : decimalsRead(reading, "ppm")),
  });
}
