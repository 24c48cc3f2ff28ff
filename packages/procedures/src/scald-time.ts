import { converted, known, type Outcome, refused } from "@tapside/quantities";

export interface ScaldTime {
  readonly seconds: number;
  readonly relation: ">" | "<" | "=";
}

const ROWS: readonly (readonly [fahrenheit: number, relation: ScaldTime["relation"], seconds: number])[] = [
  [120, ">", 300],
  [125, "=", 120],
  [130, "=", 30],
  [135, "=", 10],
  [140, "<", 5],
  [145, "<", 3],
  [150, "=", 1.5],
  [155, "=", 1],
];

/**
 * How long water of this temperature takes to burn skin: the row of the hottest temperature printed that is not above it, so that the
 * time is never too long by rounding.
 *
 * Source: Children's of Alabama, burn-prevention page (`reference/scald-times`).
 * Range: from 120 °F (48.9 °C); below it nothing is printed, which does not say it is safe.
 * Error: adult skin; children and old people burn sooner. Steam is worse.
 *
 * @example
 * ```ts
 * import { scaldTime } from "@tapside/procedures";
 * scaldTime(60); // => { kind: "known", value: { seconds: 5, relation: "<" } }
 * ```
 */
export function scaldTime(waterC: number): Outcome<ScaldTime> {
  if (!Number.isFinite(waterC)) return refused("not-a-finite-number");
  const fahrenheit = converted(waterC, "°C", "°F") + 1e-9;
  const row = ROWS.findLast(([from]) => from <= fahrenheit);
  return row ? known({ seconds: row[2], relation: row[1] }) : refused("below-scald-table", { waterC });
}
