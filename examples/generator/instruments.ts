import type { FieldValue } from "@tapside/records";
import type { Random } from "./random.ts";
import { randomOf } from "./random.ts";

/** Who comes, with what in the bag. `gain` and `offset` are what is really true of the instruments. */
export interface Technician {
  readonly name: string;
  readonly key: string;
  readonly scale: "NaCl" | "442";
  readonly gauge: "psi" | "bar";
  /** From this day the meter reads this much too high; nobody knows. */
  readonly drift?: { readonly from: string; readonly gain: number };
}

export const TECHNICIANS: readonly Technician[] = [
  { name: "J. Orme", key: "orme", scale: "NaCl", gauge: "psi" },
  { name: "N. Pike", key: "pike", scale: "442", gauge: "bar" },
  { name: "L. Hare", key: "hare", scale: "NaCl", gauge: "psi", drift: { from: "2026-02-01", gain: 1.06 } },
  { name: "S. Abbot", key: "abbot", scale: "NaCl", gauge: "psi" },
];

/** What a 442 meter shows for sodium chloride of a dissolved-solids value, near 25 °C. */
const SHOWN_ON_442 = 1 / 0.7021;

/** An instrument's own error, the same at every visit. */
const ownError = (seed: string, key: string, standard: number) =>
  standard * Math.max(-1.7, Math.min(1.7, randomOf(seed, "instrument", key).normal()));

export const metreShows = (
  of: Technician,
  seed: string,
  day: string,
  mgPerL: number,
  random: Random,
): number => {
  const drift = of.drift && day >= of.drift.from ? of.drift.gain : 1;
  const gain = (1 + ownError(seed, `${of.key}:tds`, 0.008)) * drift * (1 + 0.006 * random.normal());
  return mgPerL * gain * (of.scale === "442" ? SHOWN_ON_442 : 1);
};

export const gaugeShowsKPa = (of: Technician, seed: string, kPa: number, random: Random): number =>
  Math.max(0, kPa + ownError(seed, `${of.key}:gauge`, 2) + 1.5 * random.normal());

/** The instruments as the book knows them. */
export function instrumentFields(
  of: Technician,
): readonly (readonly [record: string, fields: Readonly<Record<string, FieldValue>>])[] {
  const bar = of.gauge === "bar";
  return [
    [
      `demo:${of.key}:meter`,
      {
        name: `Meter of ${of.name}`,
        kind: "tds",
        unit: "ppm",
        scale: of.scale,
        accuracyPercentOfReading: 2,
        resolution: 1,
        lastCheckedOn: of.drift ? "2025-06-30" : "2026-09-14",
      },
    ],
    [
      `demo:${of.key}:gauge`,
      {
        name: `Gauge of ${of.name}`,
        kind: "pressure",
        unit: of.gauge,
        accuracyPercentOfFullScale: 1,
        fullScale: bar ? 7 : 100,
        resolution: bar ? 0.05 : 0.5,
      },
    ],
  ];
}
