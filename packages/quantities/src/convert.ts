import { known, type Outcome, refused } from "./outcome.ts";

type Dimension =
  | "pressure"
  | "temperature"
  | "flow"
  | "volume"
  | "hardness"
  | "length"
  | "conductivity"
  | "concentration"
  | "time"
  | "area";

interface UnitOfTrade {
  readonly dimension: Dimension;
  /** Base units in one of this unit. */
  readonly factor: number;
  /** Added after the factor: only temperature has one. */
  readonly offset?: number;
}

const GALLON_L = 3.785411784;
const PSI_KPA = 6.894757293168361;
const GRAIN_MG = 64.79891;
const IMPERIAL_GALLON_L = 4.54609;

/**
 * Every unit of the trade once, each by its exact definition. Base units: kPa, °C, L/h, L, mg/L as CaCO₃, m, µS/cm, mg/L, h, m².
 * Source: definitions of NIST SP 811 Appendix B (US gallon 3.785411784 L, psi 6.894757 kPa, grain 64.79891 mg);
 * standard atmosphere 101.325 kPa, conventional metre of water 9.80665 kPa;
 * hardness degrees from 10 mg CaO/L (German), 10 mg CaCO₃/L (French), 1 grain per imperial gallon (Clark).
 */
export const UNITS: Readonly<Record<string, UnitOfTrade>> = {
  kPa: { dimension: "pressure", factor: 1 },
  Pa: { dimension: "pressure", factor: 0.001 },
  MPa: { dimension: "pressure", factor: 1000 },
  bar: { dimension: "pressure", factor: 100 },
  mbar: { dimension: "pressure", factor: 0.1 },
  psi: { dimension: "pressure", factor: PSI_KPA },
  atm: { dimension: "pressure", factor: 101.325 },
  mH2O: { dimension: "pressure", factor: 9.80665 },
  ftH2O: { dimension: "pressure", factor: 9.80665 * 0.3048 },
  "°C": { dimension: "temperature", factor: 1 },
  "°F": { dimension: "temperature", factor: 5 / 9, offset: -160 / 9 },
  K: { dimension: "temperature", factor: 1, offset: -273.15 },
  "L/h": { dimension: "flow", factor: 1 },
  "L/min": { dimension: "flow", factor: 60 },
  "mL/min": { dimension: "flow", factor: 0.06 },
  "L/d": { dimension: "flow", factor: 1 / 24 },
  gpd: { dimension: "flow", factor: GALLON_L / 24 },
  "m³/h": { dimension: "flow", factor: 1000 },
  "m³/d": { dimension: "flow", factor: 1000 / 24 },
  gpm: { dimension: "flow", factor: GALLON_L * 60 },
  L: { dimension: "volume", factor: 1 },
  mL: { dimension: "volume", factor: 0.001 },
  "m³": { dimension: "volume", factor: 1000 },
  gal: { dimension: "volume", factor: GALLON_L },
  "imp gal": { dimension: "volume", factor: IMPERIAL_GALLON_L },
  "fl oz": { dimension: "volume", factor: GALLON_L / 128 },
  "ft³": { dimension: "volume", factor: 28.316846592 },
  "mg/L CaCO3": { dimension: "hardness", factor: 1 },
  gpg: { dimension: "hardness", factor: GRAIN_MG / GALLON_L },
  "°dH": { dimension: "hardness", factor: (10 * 100.0869) / 56.0774 },
  "°fH": { dimension: "hardness", factor: 10 },
  "°e": { dimension: "hardness", factor: GRAIN_MG / IMPERIAL_GALLON_L },
  "mmol/L": { dimension: "hardness", factor: 100.0869 },
  m: { dimension: "length", factor: 1 },
  mm: { dimension: "length", factor: 0.001 },
  cm: { dimension: "length", factor: 0.01 },
  in: { dimension: "length", factor: 0.0254 },
  ft: { dimension: "length", factor: 0.3048 },
  "µS/cm": { dimension: "conductivity", factor: 1 },
  "mS/cm": { dimension: "conductivity", factor: 1000 },
  "mg/L": { dimension: "concentration", factor: 1 },
  ppm: { dimension: "concentration", factor: 1 },
  "µg/L": { dimension: "concentration", factor: 0.001 },
  ppb: { dimension: "concentration", factor: 0.001 },
  "g/L": { dimension: "concentration", factor: 1000 },
  h: { dimension: "time", factor: 1 },
  min: { dimension: "time", factor: 1 / 60 },
  s: { dimension: "time", factor: 1 / 3600 },
  d: { dimension: "time", factor: 24 },
  "m²": { dimension: "area", factor: 1 },
  "ft²": { dimension: "area", factor: 0.3048 ** 2 },
};

/** Spellings typed on a plain keyboard. */
const SPELLINGS: Readonly<Record<string, string>> = {
  C: "°C",
  F: "°F",
  m3: "m³",
  dH: "°dH",
  fH: "°fH",
  clark: "°e",
  Clark: "°e",
  "°Clark": "°e",
  "mg/L as CaCO3": "mg/L CaCO3",
  "mg/L CaCO₃": "mg/L CaCO3",
  "μS/cm": "µS/cm",
  "uS/cm": "µS/cm",
  psig: "psi",
  barg: "bar",
  "ug/L": "µg/L",
  "μg/L": "µg/L",
  "m3/h": "m³/h",
  "m3/d": "m³/d",
  ft3: "ft³",
  floz: "fl oz",
  "gal/d": "gpd",
  "gal/min": "gpm",
  l: "L",
  ml: "mL",
  "l/h": "L/h",
  "l/min": "L/min",
  "ml/min": "mL/min",
  "mg/l": "mg/L",
  PSI: "psi",
  m2: "m²",
  ft2: "ft²",
};

function unitNamed(name: string): UnitOfTrade | undefined {
  const spelling = Object.hasOwn(SPELLINGS, name) ? SPELLINGS[name]! : name;
  return Object.hasOwn(UNITS, spelling) ? UNITS[spelling] : undefined;
}

/** Hardness is written "mg/L" by nearly everyone: beside a hardness unit it means mg/L as CaCO₃. */
function asHardness(unit: UnitOfTrade, other: UnitOfTrade): UnitOfTrade {
  return unit.dimension === "concentration" && other.dimension === "hardness"
    ? { dimension: "hardness", factor: 1 }
    : unit;
}

/**
 * A value in another unit of the same dimension.
 *
 * Refused: "unit-unknown", "units-differ-in-kind", "not-a-finite-number".
 *
 * @example
 * ```ts
 * import { convert } from "@tapside/quantities";
 * convert(12, "gpg", "mg/L"); // => { kind: "known", value: 205.42 }
 * convert(50, "°F", "°C"); // => { kind: "known", value: 10.00 }
 * ```
 */
export function convert(value: number, from: string, to: string): Outcome<number> {
  if (!Number.isFinite(value)) return refused("not-a-finite-number");
  const given = unitNamed(from);
  const wanted = unitNamed(to);
  if (!given) return refused("unit-unknown", { unit: from });
  if (!wanted) return refused("unit-unknown", { unit: to });
  const source = asHardness(given, wanted);
  const target = asHardness(wanted, given);
  if (source.dimension !== target.dimension) {
    return refused("units-differ-in-kind", {
      from,
      fromKind: source.dimension,
      to,
      toKind: target.dimension,
    });
  }
  const base = value * source.factor + (source.offset ?? 0);
  return known((base - (target.offset ?? 0)) / target.factor);
}

/** A value converted between two units known to be of one kind; a wrong pair is our own bug. */
export function converted(value: number, from: string, to: string): number {
  const outcome = convert(value, from, to);
  if (outcome.kind !== "known") throw new Error(`no conversion from ${from} to ${to}`);
  return outcome.value;
}
