import type { Uncertain } from "./uncertain.ts";

export interface FormattedUncertain {
  readonly text: string;
  /** The expanded uncertainty U = 2u; empty when there is none. */
  readonly uText: string;
}

/**
 * A number with the digits its uncertainty backs: U = 2u to one digit (two when it begins with 1), the value to the same place.
 * Source: JCGM 100, 7.2.6 (no more digits than the uncertainty backs).
 *
 * @example
 * ```ts
 * import { formatUncertain } from "@tapside/quantities";
 * formatUncertain({ value: 0.9284, u: 0.0211 }); // => { text: "0.93", uText: "0.04" }
 * formatUncertain({ value: 3.68, u: 0.74 }, ","); // => { text: "3,7", uText: "1,5" }
 * ```
 */
export function formatUncertain(measured: Uncertain, decimalSign: "." | "," = "."): FormattedUncertain {
  const sign = (text: string) => text.replace(".", decimalSign);
  const expanded = 2 * measured.u;
  if (!(expanded > 0)) return { text: sign(String(Number(measured.value.toPrecision(3)))), uText: "" };
  const exponent = Math.floor(Math.log10(expanded));
  const leading = expanded / 10 ** exponent;
  const decimals = Math.min(6, Math.max(0, (leading < 1.95 ? 1 : 0) - exponent));
  return { text: sign(measured.value.toFixed(decimals)), uText: sign(expanded.toFixed(decimals)) };
}
