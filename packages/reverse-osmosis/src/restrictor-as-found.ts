import { known, missing, type Outcome, refused } from "@tapside/quantities";
import type { Restrictor } from "./restrictor.ts";

/** A restrictor as a technician finds and writes it down. Without a kind, two numbers are its rating. */
export interface RestrictorFound {
  readonly restrictorKind?: Restrictor["kind"];
  /** As rated, or as measured. */
  readonly restrictorLPerH?: number;
  readonly restrictorAtKPaGauge?: number;
  /** Water of the measurement. */
  readonly restrictorAtC?: number;
  readonly restrictorLaw?: "orifice" | "laminar";
  readonly restrictorBoreMm?: number;
  readonly restrictorLengthM?: number;
}

/** What such a thing can be; beyond it lies a slip of the decimal sign. Common practice, no source. */
export const RESTRICTOR_RANGES = {
  restrictorLPerH: [0.1, 3000],
  restrictorAtKPaGauge: [50, 3000],
  restrictorAtC: [1, 45],
  restrictorBoreMm: [0.05, 3],
  restrictorLengthM: [0.005, 20],
} as const satisfies Partial<Record<keyof RestrictorFound, readonly [number, number]>>;

type Measure = keyof typeof RESTRICTOR_RANGES;

/** What must be known of each kind; the water's warmth of a measurement only where the law asks for it. */
const NEEDS: Readonly<Record<Restrictor["kind"], readonly Measure[]>> = {
  rated: ["restrictorLPerH", "restrictorAtKPaGauge"],
  capillary: ["restrictorBoreMm", "restrictorLengthM"],
  orifice: ["restrictorBoreMm"],
  measured: ["restrictorLPerH", "restrictorAtKPaGauge"],
};

/** The numbers a restrictor found so is known by, in the order they are asked for. */
export const restrictorMeasures = ({ restrictorKind = "rated", restrictorLaw }: RestrictorFound) =>
  restrictorKind === "measured" && restrictorLaw === "laminar"
    ? [...NEEDS.measured, "restrictorAtC" as const]
    : NEEDS[restrictorKind];

/**
 * The restrictor as physics of what was found; what is missing is named by `unit.` and its field.
 *
 * Range: `RESTRICTOR_RANGES`; refused beyond with "out-of-range".
 * @example
 * ```ts
 * import { restrictorAsFound } from "@tapside/reverse-osmosis";
 * restrictorAsFound({ restrictorKind: "orifice", restrictorBoreMm: 0.8 }); // => { kind: "known", value: { kind: "orifice", boreMm: 0.8 } }
 * ```
 */
export function restrictorAsFound(found: RestrictorFound): Outcome<Restrictor> {
  if (found.restrictorKind !== undefined && !Object.hasOwn(NEEDS, found.restrictorKind))
    return missing("unit.restrictorKind");
  const needs = restrictorMeasures(found);
  const absent = [
    ...(found.restrictorKind === "measured" && found.restrictorLaw === undefined ? ["restrictorLaw"] : []),
    ...needs.filter((field) => !(found[field]! > 0)),
  ];
  if (absent.length > 0) return missing(...absent.map((field) => `unit.${field}`));
  for (const field of found.restrictorKind ? needs : []) {
    const [low, high] = RESTRICTOR_RANGES[field];
    const value = found[field]!;
    if (!(value >= low && value <= high)) return refused("out-of-range", { name: field, value, low, high });
  }
  return known(MAKE[found.restrictorKind ?? "rated"](found));
}

const MAKE: Readonly<Record<Restrictor["kind"], (found: RestrictorFound) => Restrictor>> = {
  rated: (found) => ({
    kind: "rated",
    ratedLPerH: found.restrictorLPerH!,
    ratedKPa: found.restrictorAtKPaGauge!,
  }),
  capillary: (found) => ({
    kind: "capillary",
    boreMm: found.restrictorBoreMm!,
    lengthM: found.restrictorLengthM!,
  }),
  orifice: (found) => ({ kind: "orifice", boreMm: found.restrictorBoreMm! }),
  measured: (found) => ({
    kind: "measured",
    law: found.restrictorLaw!,
    flowLPerH: found.restrictorLPerH!,
    dropKPa: found.restrictorAtKPaGauge!,
    temperatureC: found.restrictorAtC ?? 20,
  }),
};
