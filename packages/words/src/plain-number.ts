import { inSign } from "./in-sign.ts";

/** A limit or setting: three figures at most, no trailing noughts. */
export function plainNumber(value: number, decimalSign: "." | "," = "."): string {
  return inSign(String(Number(value.toPrecision(3))), decimalSign);
}
