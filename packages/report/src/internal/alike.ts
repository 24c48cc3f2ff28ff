/** Inputs are kept to eight digits, and roots are found to about five: what is worked out from them agrees to four, as many as are ever shown. */
const RELATIVE = 1e-4;
const ABSOLUTE = 1e-9;

/** Whether two pieces of plain data say the same, numbers to four digits. */
export function alike(a: unknown, b: unknown): boolean {
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= ABSOLUTE + RELATIVE * Math.max(Math.abs(a), Math.abs(b));
  if (a === null || b === null || typeof a !== "object" || typeof b !== "object") return a === b;
  const [left, right] = [a, b] as readonly Readonly<Record<string, unknown>>[];
  const names = new Set([...Object.keys(left!), ...Object.keys(right!)]);
  return [...names].every((name) => alike(left![name], right![name]));
}
