import { known, type Outcome, refused } from "./outcome.ts";

/** A number as typed: its value and how many decimals the typist wrote. */
export interface TypedNumber {
  readonly value: number;
  readonly decimals: number;
}

const NUMBER = /^([+-]?)(\d*)(?:[.,](\d*))?$/;

/**
 * Reads a number typed in the field. Comma and point are the same decimal mark, allowed once; never grouping.
 * Spaces are dropped, U+2212 is a minus. The caller keeps the raw text.
 *
 * Refused: "nothing-typed", "two-decimal-marks", "not-a-number", "too-long".
 *
 * @example
 * ```ts
 * import { parseReading } from "@tapside/quantities";
 * parseReading("51,6"); // => { kind: "known", value: { value: 51.6, decimals: 1 } }
 * ```
 */
export function parseReading(raw: string): Outcome<TypedNumber> {
  const text = raw.replace(/[\s\u00a0\u202f]/g, "").replace(/\u2212/g, "-");
  if (text === "") return refused("nothing-typed");
  if (text.length > 12) return refused("too-long", { text: text.slice(0, 12) });
  if ((text.match(/[.,]/g) ?? []).length > 1) return refused("two-decimal-marks", { text });
  const match = NUMBER.exec(text);
  if (!match || !(match[2] || match[3])) return refused("not-a-number", { text });
  const value = Number(`${match[1]}${match[2] || "0"}.${match[3] || "0"}`);
  return known({ value: value === 0 ? 0 : value, decimals: match[3]?.length ?? 0 });
}
