/** Plain data with numbers rounded to eight digits, so that phone, command line and server freeze the same text. */
export function rounded(value: unknown): unknown {
  if (typeof value === "number") return Number.isFinite(value) ? Number(value.toPrecision(8)) : null;
  if (Array.isArray(value)) return value.map(rounded);
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, inner]) => (inner === undefined ? [] : [[name, rounded(inner)]])),
  );
}
