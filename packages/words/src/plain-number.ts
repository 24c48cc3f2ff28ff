/** A limit or setting: three figures at most, no trailing noughts. */
export function plainNumber(value: number, decimalSign: "." | "," = "."): string {
  return String(Number(value.toPrecision(3))).replace(".", decimalSign);
}
