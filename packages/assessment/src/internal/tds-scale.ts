import type { TdsScale } from "@tapside/records";
import { ec25FromTds, tdsOnScale } from "@tapside/water";
import { remember } from "./remember.ts";

/** A meter's scale, or conductivity at 25 °C in µS/cm. */
export type SolidsColumn = TdsScale | "EC";

interface Asked {
  readonly value: number;
  readonly from: SolidsColumn;
  readonly to: SolidsColumn;
}

/** A dissolved-solids reading on another scale; values that are none come back as they are. */
export function convertTds(value: number, from: SolidsColumn, to: SolidsColumn): number {
  if (from === to || !(value > 0)) return value;
  return between({ value, from, to });
}

const between = remember(({ value, from, to }: Asked): number => {
  const ec25 = from === "EC" ? value : shown(ec25FromTds(value, from), value);
  return to === "EC" ? ec25 : shown(tdsOnScale(ec25, to), value);
});

const shown = (outcome: ReturnType<typeof tdsOnScale>, otherwise: number): number =>
  outcome.kind === "known" ? outcome.value.value : otherwise;

/** Relative standard uncertainty of reading one scale as another: 1 %, 3 % in very clean water. */
export const scaleDoubt = (valueNaCl: number): number => {
  const ec25 = ec25FromTds(Math.max(0, valueNaCl), "NaCl");
  return ec25.kind === "known" ? ec25.value.relativeUncertainty : 0.2;
};
