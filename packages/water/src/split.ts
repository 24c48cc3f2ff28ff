import { known, type Outcome, refused } from "@tapside/quantities";
import { CHARGE, CONSTITUENTS, type ConservedWater, type ConstituentId } from "./analysis.ts";
import { speciateConserved } from "./speciate.ts";

/** Rejection of each constituent, 0–1. Sodium is left out: it closes the permeate's charge balance. */
export type Rejections = Readonly<Record<Exclude<ConstituentId, "Na"> | "alkalinity", number>>;

export interface SplitStreams {
  readonly permeate: ConservedWater;
  readonly concentrate: ConservedWater;
}

function permeateTotals(feed: ConservedWater, rejections: Rejections): Record<ConstituentId, number> {
  const totals = { ...feed.totals };
  for (const id of CONSTITUENTS) if (id !== "Na") totals[id] = feed.totals[id] * (1 - rejections[id]);
  let anions = feed.alkalinityEqPerKg * (1 - rejections.alkalinity);
  for (const id of CONSTITUENTS) if (id !== "Na") anions -= CHARGE[id] * totals[id];
  return { ...totals, Na: anions };
}

function concentrateOf(feed: ConservedWater, permeate: ConservedWater, recovery: number): ConservedWater {
  const left = (whole: number, through: number) => (whole - recovery * through) / (1 - recovery);
  const totals = { ...feed.totals };
  for (const id of CONSTITUENTS) totals[id] = left(feed.totals[id], permeate.totals[id]);
  return {
    temperatureC: feed.temperatureC,
    totals,
    alkalinityEqPerKg: left(feed.alkalinityEqPerKg, permeate.alkalinityEqPerKg),
    carbonMolPerKg: left(feed.carbonMolPerKg, permeate.carbonMolPerKg),
  };
}

/**
 * Splits a feed into permeate and concentrate by given rejections and recovery. Dissolved CO2 passes freely, the
 * other carbon as the alkalinity does, so a permeate is acid. Sodium closes the permeate's charge balance; the
 * concentrate is what is left, and carries the feed's imbalance (its sodium can come out negative in an unbalanced
 * or very hard feed; the solver then takes none).
 *
 * Source: mass balance; reference values in `reference/water-cases/ro_open.csv`.
 * Range: recovery below 1. Error: that of the rejections given.
 */
export function splitStream(
  feed: ConservedWater,
  rejections: Rejections,
  recovery: number,
): Outcome<SplitStreams> {
  if (!(recovery > 0 && recovery < 1)) return refused("recovery-out-of-range", { recovery });
  for (const [id, value] of Object.entries(rejections))
    if (!(value >= -1 && value <= 1)) return refused("rejection-out-of-range", { id, value });
  const solved = speciateConserved(feed);
  if (solved.kind !== "known") return solved;
  const co2 = solved.value.molality.CO2;
  const pass = 1 - rejections.alkalinity;
  const permeate: ConservedWater = {
    temperatureC: feed.temperatureC,
    totals: permeateTotals(feed, rejections),
    alkalinityEqPerKg: feed.alkalinityEqPerKg * pass,
    carbonMolPerKg: co2 + (feed.carbonMolPerKg - co2) * pass,
  };
  return known({ permeate, concentrate: concentrateOf(feed, permeate, recovery) });
}
