import {
  allKnown,
  known,
  mapOutcome,
  missing,
  type Outcome,
  percentReduction,
  propagate,
  type Uncertain,
} from "@tapside/quantities";
import type { SlotId, UnitFile } from "@tapside/records";
import type { Figure } from "./assessment.ts";
import { amountOf, type PhaseReadings, readingAccuracy, scaleOf, usable } from "./internal/amounts.ts";
import { decimalsRead } from "./internal/decimals-read.ts";
import { finite } from "./internal/finite.ts";
import { convertTds } from "./internal/tds-scale.ts";

/** Percent reduction, permeate to waste against feed. One meter for both samples shares its gain error, which cancels. */
export function reductionOf(readings: PhaseReadings, file: UnitFile): Outcome<Figure> {
  const { feedTds: feed, permeateTds: product } = readings;
  if (!usable(feed) || !usable(product)) {
    return missing(
      ...[!usable(feed) && "feedTds", !usable(product) && "permeateTds"].filter((one) => one !== false),
    );
  }
  const feedScale = scaleOf(feed, file);
  const productScale = scaleOf(product, file);
  const reduction = percentReduction({
    feedMgPerL: feed.value,
    productMgPerL: convertTds(product.value, productScale, feedScale),
    feedMeter: readingAccuracy("feedTds", feed, file),
    productMeter: readingAccuracy("permeateTds", product, file),
    sameMeter: feed.instrument !== undefined && feed.instrument === product.instrument,
  });
  return mapOutcome(reduction, (value) => finite(known({ ...value, unit: "%" })));
}

/** Recovery now: permeate over feed. */
export function recoveryOf(readings: PhaseReadings, file: UnitFile): Outcome<Figure> {
  const flows = allKnown({
    permeate: amountOf("permeateFlow", readings, file),
    drain: amountOf("drainFlow", readings, file),
  });
  return mapOutcome(flows, ({ permeate, drain }) => {
    const share = propagate(([p, d]) => (100 * p!) / (p! + d!), [permeate, drain]);
    return finite(known({ ...share, unit: "%" }));
  });
}

/** Pressure lost in the pre-filters, kPa. */
export function filterDropKPa(readings: PhaseReadings, file: UnitFile): Outcome<Uncertain> {
  const ends = allKnown({
    before: amountOf("beforeFilterPressure", readings, file),
    after: amountOf("afterFilterPressure", readings, file),
  });
  return mapOutcome(ends, ({ before, after }) =>
    known({ value: before.value - after.value, u: Math.hypot(before.u, after.u) }),
  );
}

/** Dissolved solids as read, on the scale of the meter. */
export function solidsAsRead(slot: SlotId, readings: PhaseReadings, file: UnitFile): Outcome<Figure> {
  const reading = readings[slot];
  const nacl = amountOf(slot, readings, file);
  if (!usable(reading) || nacl.kind !== "known") return missing(slot);
  const scale = scaleOf(reading, file);
  const factor = nacl.value.value > 0 ? convertTds(nacl.value.value, "NaCl", scale) / nacl.value.value : 1;
  const value = { value: nacl.value.value * factor, u: nacl.value.u * factor, unit: "ppm", scale };
  return finite(known({ ...value, ...decimalsRead(reading, "ppm") }));
}
