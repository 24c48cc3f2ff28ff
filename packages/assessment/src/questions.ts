import { allKnown, propagate } from "@tapside/quantities";
import type { SlotId, UnitFile } from "@tapside/records";
import { linesAsFound, type Restrictor, restrictorAsFound, restrictorLPerH } from "@tapside/reverse-osmosis";
import type { Question } from "./assessment.ts";
import { boosterOf, drainsOf, membranePressure } from "./from-records.ts";
import { amountOf, type PhaseReadings, scaleOf, usable } from "./internal/amounts.ts";
import { liftAboveFeedKPa } from "./internal/lift-above-feed.ts";
import { lineDropKPa } from "./internal/line-drop.ts";
import type { Visit } from "./internal/parts-in-service.ts";
import { phaseReadings, visitsUpTo } from "./internal/phase-readings.ts";

/** Readings that contradict each other or look like a slip of unit, scale or place. Asked, never corrected. */
export function questionsOf(file: UnitFile, visit: Visit): readonly Question[] {
  const readings = phaseReadings(visit, "asFound");
  const left = phaseReadings(visit, "asLeft");
  const before = visitsUpTo(file, visit).slice(0, -1).reverse();
  return [
    ...unitSlips(visit.readings.asFound),
    ...unitSlips(visit.readings.asLeft),
    ...outOfOrder(readings, file),
    ...outOfOrder(left, file).filter((one) => one.slots.includes("afterFilterPressure")),
    ...saltBalance(readings, file),
    ...waterBalance(readings, file),
    ...drainBalance(readings, file),
    ...scaleSlip(readings, file, before),
    ...meterBack(readings, file, before),
  ].filter(
    (one, i, all) => all.findIndex((other) => other.id === one.id && other.slots[0] === one.slots[0]) === i,
  );
}

const FEED_SIDE: readonly SlotId[] = ["staticPressure", "beforeFilterPressure", "afterFilterPressure"];

/** bar typed as psi, psi as bar, °F as °C, °C as °F. */
function unitSlips(readings: PhaseReadings): Question[] {
  const slips = FEED_SIDE.flatMap((slot): Question[] => {
    const reading = readings[slot];
    if (!usable(reading)) return [];
    if (reading.unit === "psi" && reading.value > 1 && reading.value < 10)
      return [{ id: "barAsPsi", slots: [slot], detail: { value: reading.value } }];
    if (reading.unit === "bar" && reading.value > 12)
      return [{ id: "psiAsBar", slots: [slot], detail: { value: reading.value } }];
    return [];
  });
  const temperature = readings.feedTemperature;
  if (usable(temperature) && temperature.unit === "°C" && temperature.value > 36)
    slips.push({
      id: "fahrenheitAsCelsius",
      slots: ["feedTemperature"],
      detail: { value: temperature.value },
    });
  if (usable(temperature) && temperature.unit === "°F" && temperature.value < 33)
    slips.push({
      id: "celsiusAsFahrenheit",
      slots: ["feedTemperature"],
      detail: { value: temperature.value },
    });
  return slips;
}

/** Value of `high` must not lie under `low` by more than their uncertainty and an allowance. */
function above(
  readings: PhaseReadings,
  file: UnitFile,
  low: SlotId,
  high: SlotId,
  allowance: number,
): boolean {
  const [a, b] = [amountOf(low, readings, file), amountOf(high, readings, file)];
  if (a.kind !== "known" || b.kind !== "known") return false;
  return a.value.value - b.value.value > 2 * Math.hypot(a.value.u, b.value.u) + allowance;
}

/** Pressure falls along the line, and a tank is not filled above the feed; at night the feed may stand 20 psi higher than by day. */
const NIGHT_KPA = 140;

function outOfOrder(readings: PhaseReadings, file: UnitFile): Question[] {
  const out: Question[] = [];
  if (above(readings, file, "afterFilterPressure", "beforeFilterPressure", 0))
    out.push({ id: "pressuresOutOfOrder", slots: ["afterFilterPressure", "beforeFilterPressure"] });
  if (above(readings, file, "beforeFilterPressure", "staticPressure", 0))
    out.push({ id: "flowingAboveStatic", slots: ["beforeFilterPressure", "staticPressure"] });
  const feed = readings.staticPressure ? "staticPressure" : "beforeFilterPressure";
  const pumpKPa = boosterOf(file.unit)?.shutOffRiseKPa ?? 0;
  const allowance = NIGHT_KPA + pumpKPa + liftAboveFeedKPa(readings, file, feed);
  if (above(readings, file, "tankFullPressure", feed, allowance))
    out.push({ id: "tankAboveFeedPressure", slots: ["tankFullPressure", feed] });
  if (above(readings, file, "tankAfterPressure", "tankFullPressure", 0))
    out.push({ id: "tankRoseWhileDrawing", slots: ["tankAfterPressure", "tankFullPressure"] });
  return out;
}

/** All salt in the permeate and the tank came in with the feed; all water in the tank came through the membrane. */
function saltBalance(readings: PhaseReadings, file: UnitFile): Question[] {
  const out: Question[] = [];
  if (above(readings, file, "permeateTds", "feedTds", 0))
    out.push({ id: "permeateAboveFeed", slots: ["permeateTds", "feedTds"] });
  if (above(readings, file, "deliveredTds", "feedTds", 0) && !file.unit.remineraliser)
    out.push({ id: "deliveredAboveFeed", slots: ["deliveredTds", "feedTds"] });
  if (above(readings, file, "chlorineAfter", "chlorineBefore", 0))
    out.push({ id: "chlorineRises", slots: ["chlorineAfter", "chlorineBefore"] });
  for (const [free, total] of FREE_AND_TOTAL)
    if (above(readings, file, free, total, 0)) out.push({ id: "freeAboveTotal", slots: [free, total] });
  const [tank, membrane] = (["deliveredTds", "permeateTds"] as const).map((slot) =>
    amountOf(slot, readings, file),
  );
  if (tank?.kind === "known" && membrane?.kind === "known") {
    const lowest = 0.8 * membrane.value.value - 2 * Math.hypot(tank.value.u, membrane.value.u);
    if (tank.value.value < lowest)
      out.push({ id: "deliveredBelowPermeate", slots: ["deliveredTds", "permeateTds"] });
  }
  return out;
}

const FREE_AND_TOTAL = [
  ["chlorineFreeBefore", "chlorineBefore"],
  ["chlorineFreeAfter", "chlorineAfter"],
] as const;

const BALANCE_ALLOWANCE = 0.1;

/** Salt in is salt out: Qf Cf = Qp Cp + Qd Cd. A drain far from what flows and the other two samples say is a slip in one of them. */
function drainBalance(readings: PhaseReadings, file: UnitFile): Question[] {
  const given = allKnown({
    feed: amountOf("feedTds", readings, file),
    product: amountOf("permeateTds", readings, file),
    drain: amountOf("drainTds", readings, file),
    permeateFlow: amountOf("permeateFlow", readings, file),
    drainFlow: amountOf("drainFlow", readings, file),
  });
  if (given.kind !== "known") return [];
  const { feed, product, drain, permeateFlow, drainFlow } = given.value;
  const ratio = propagate(
    ([f, p, d, qp, qd]) => d! / (((qp! + qd!) * f! - qp! * p!) / qd!),
    [feed, product, drain, permeateFlow, drainFlow],
  );
  if (!Number.isFinite(ratio.value) || Math.abs(ratio.value - 1) <= 2 * ratio.u + BALANCE_ALLOWANCE)
    return [];
  const percent = Math.round(100 * (ratio.value - 1));
  return [{ id: "saltDoesNotBalance", slots: ["drainTds", "feedTds", "drainFlow"], detail: { percent } }];
}

const RECOVERY_AT_MOST = 0.6;

/** More than 60 % recovery on a small unit, or a drain far from its restrictor, is more likely a slip of the stopwatch. */
function waterBalance(readings: PhaseReadings, file: UnitFile): Question[] {
  const [permeate, drain] = (["permeateFlow", "drainFlow"] as const).map((slot) =>
    amountOf(slot, readings, file),
  );
  if (permeate?.kind !== "known" || drain?.kind !== "known") return [];
  const recovery = permeate.value.value / (permeate.value.value + drain.value.value);
  if (recovery > RECOVERY_AT_MOST)
    return [
      {
        id: "flowsSwapped",
        slots: ["permeateFlow", "drainFlow"],
        detail: { recovery: Math.round(100 * recovery) },
      },
    ];
  if (amountOf("afterFilterPressure", readings, file).kind !== "known") return [];
  const after = membranePressure(readings, file);
  if (after.kind !== "known" || !(after.value.value > 0)) return [];
  const found = restrictorAsFound(file.unit);
  if (file.unit.restrictorKind && found.kind === "known")
    return againstFound(found.value, drain.value.value, after.value.value, { readings, file });
  const { ratedRejectLPerH, testPressureKPaGauge, twoElements, elementArrangement } = file.unit;
  if (!(ratedRejectLPerH! > 0) || !(testPressureKPaGauge! > 0)) return [];
  const ratio =
    drain.value.value / (ratedRejectLPerH! * Math.sqrt(after.value.value / testPressureKPaGauge!));
  // Two elements, the plate for one: one behind the other they share its drain flow, side by side they drain twice as much.
  const [least, most] = !twoElements
    ? [1, 1]
    : elementArrangement === undefined
      ? [1, 2]
      : [drainsOf(file.unit), drainsOf(file.unit)];
  return ratio > 0.5 * least && ratio < 2 * most ? [] : [drainAgainst(ratio)];
}

const drainAgainst = (ratio: number): Question => ({
  id: "drainAgainstRestrictor",
  slots: ["drainFlow", "afterFilterPressure"],
  detail: { ratio: Math.round(100 * ratio) / 100 },
});

/** Against the restrictor whose kind was found, by its own law in today's water. */
function againstFound(
  restrictor: Restrictor,
  drainLPerH: number,
  pressureKPa: number,
  { readings, file }: { readonly readings: PhaseReadings; readonly file: UnitFile },
): Question[] {
  const water = amountOf("feedTemperature", readings, file);
  if (water.kind !== "known") return [];
  const lineKPa = lineDropKPa(linesAsFound(file.unit).drainTubes, drainLPerH, readings, file);
  const ratio = drainLPerH / restrictorLPerH(restrictor, pressureKPa - lineKPa, water.value.value);
  return Number.isFinite(ratio) && (ratio <= 0.5 || ratio >= 2) ? [drainAgainst(ratio)] : [];
}

const SCALE_STEP = { low: 1.3, high: 1.55 } as const;

/** Feed up or down by about 1.4 while the membrane rejects as before: a meter on another scale, not another water. */
function scaleSlip(readings: PhaseReadings, file: UnitFile, before: readonly Visit[]): Question[] {
  const now = rejectionOf(readings, file);
  const past = before
    .map((one) => ({ visit: one, seen: rejectionOf(phaseReadings(one, "asFound"), file) }))
    .find((one) => one.seen);
  if (!now || !past?.seen) return [];
  const ratio = now.feed / past.seen.feed;
  const up = Math.max(ratio, 1 / ratio);
  if (!(up >= SCALE_STEP.low && up <= SCALE_STEP.high)) return [];
  if (Math.abs(now.rejection - past.seen.rejection) > 0.02) return [];
  const reading = readings.feedTds!;
  return [
    {
      id: "meterOnAnotherScale",
      slots: ["feedTds", "permeateTds"],
      detail: { percent: Math.round(100 * (ratio - 1)), scale: scaleOf(reading, file), visit: past.visit.id },
    },
  ];
}

function rejectionOf(readings: PhaseReadings, file: UnitFile) {
  const [feed, product] = (["feedTds", "permeateTds"] as const).map((slot) => amountOf(slot, readings, file));
  if (feed?.kind !== "known" || product?.kind !== "known" || !(feed.value.value > 0)) return undefined;
  return { feed: feed.value.value, rejection: 1 - product.value.value / feed.value.value };
}

function meterBack(readings: PhaseReadings, file: UnitFile, before: readonly Visit[]): Question[] {
  const now = amountOf("waterMeter", readings, file);
  if (now.kind !== "known") return [];
  for (const earlier of before) {
    const then = amountOf("waterMeter", { ...earlier.readings.asFound, ...earlier.readings.asLeft }, file);
    if (then.kind !== "known") continue;
    return now.value.value < then.value.value - 0.02
      ? [{ id: "meterWentBack", slots: ["waterMeter"], detail: { last: then.value.value } }]
      : [];
  }
  return [];
}
