import { known, missing, type Outcome, refused } from "@tapside/quantities";
import { CONSTITUENTS, type ConstituentId, type WaterAnalysis } from "@tapside/water";

export type Cells = Readonly<Record<string, string>>;

/** A cell as a number: undefined when blank, NaN when it holds something else. */
export function cell(input: Cells, column: string): number | undefined {
  const text = (input[column] ?? "").trim();
  return text === "" ? undefined : Number(text);
}

/** Named cells that must be there. */
export function numbersOf<C extends string>(input: Cells, columns: readonly C[]): Outcome<Record<C, number>> {
  const values: Partial<Record<C, number>> = {};
  const absent: string[] = [];
  for (const column of columns) {
    const value = cell(input, column);
    if (value === undefined) absent.push(column);
    else if (!Number.isFinite(value)) return refused("not-a-number", { column, text: input[column] ?? "" });
    else values[column] = value;
  }
  return absent.length > 0 ? missing(...absent) : known(values as Record<C, number>);
}

/**
 * A water from the columns `T_C, pH, Alk_CaCO3_mg` and `<ion>_mg`, each after a prefix. Temperature, pH and alkalinity
 * must be there; a blank constituent counts as none in the water.
 */
export function analysisOf(input: Cells, prefix = "", temperatureColumn = "T_C"): Outcome<WaterAnalysis> {
  const base = numbersOf(input, [temperatureColumn, `${prefix}pH`, `${prefix}Alk_CaCO3_mg`]);
  if (base.kind !== "known") return base;
  const ions: Partial<Record<ConstituentId, number>> = {};
  for (const id of CONSTITUENTS) {
    const value = cell(input, `${prefix}${id}_mg`);
    if (value === undefined) continue;
    if (!Number.isFinite(value)) return refused("not-a-number", { column: `${prefix}${id}_mg` });
    ions[id] = value;
  }
  return known({
    temperatureC: base.value[temperatureColumn]!,
    pH: base.value[`${prefix}pH`]!,
    alkalinityMgPerLCaCO3: base.value[`${prefix}Alk_CaCO3_mg`]!,
    ions,
  });
}

/** What a table shows for a number: seven significant digits, a blank for what does not exist (−∞, no answer). */
export function shown(value: number): number | string {
  return Number.isFinite(value) ? Number(value.toPrecision(7)) : "";
}

export const allShown = (values: Readonly<Record<string, number>>): Record<string, number | string> =>
  Object.fromEntries(Object.entries(values).map(([column, value]) => [column, shown(value)]));

/** A cell from an outcome: blank when there is no answer. */
export const orBlank = <T>(outcome: Outcome<T>, of: (value: T) => number): number =>
  outcome.kind === "known" ? of(outcome.value) : Number.NaN;
