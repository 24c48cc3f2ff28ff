import { known, type Outcome } from "@tapside/quantities";
import { CONSTITUENTS, type ConstituentId, type WaterAnalysis } from "@tapside/water";
import { all, mapReader, number, optional, type Reader } from "./reader.ts";

type IonsRead = Readonly<Partial<Record<ConstituentId, number>>>;

const present = (ions: Readonly<Record<ConstituentId, number | undefined>>): IonsRead =>
  Object.fromEntries(Object.entries(ions).filter(([, value]) => value !== undefined));

/** Constituents that are read, from the columns `<ion>_mg` after a prefix. */
export const ionsIn = (prefix = ""): Reader<IonsRead> =>
  mapReader(
    all(
      Object.fromEntries(CONSTITUENTS.map((id) => [id, optional(`${prefix}${id}_mg`)])) as Record<
        ConstituentId,
        Reader<number | undefined>
      >,
    ),
    (ions) => known(present(ions)),
  );

/**
 * A water from the columns `T_C`, and after a prefix `pH`, `Alk_CaCO3_mg` and `<ion>_mg`. Temperature, pH and alkalinity
 * must be there; a blank constituent counts as none in the water.
 */
export const analysisIn = (prefix = ""): Reader<WaterAnalysis> =>
  all({
    temperatureC: number("T_C"),
    pH: number(`${prefix}pH`),
    alkalinityMgPerLCaCO3: number(`${prefix}Alk_CaCO3_mg`),
    ions: ionsIn(prefix),
  });

/** What a table shows for a number: seven significant digits, a blank for what does not exist (−∞, no answer). */
export function shown(value: number): number | string {
  return Number.isFinite(value) ? Number(value.toPrecision(7)) : "";
}

export const allShown = (values: Readonly<Record<string, number>>): Record<string, number | string> =>
  Object.fromEntries(Object.entries(values).map(([column, value]) => [column, shown(value)]));

/** A cell from an outcome: blank when there is no answer. */
export const orBlank = <T>(outcome: Outcome<T>, of: (value: T) => number): number =>
  outcome.kind === "known" ? of(outcome.value) : Number.NaN;
