import { quantile } from "@tapside/quantities";
import { shown } from "./water-input.ts";

const LEVELS = [
  ["p05", 0.05],
  ["p50", 0.5],
  ["p95", 0.95],
] as const;

/** Columns of a completed quantity: its 5, 50 and 95 %. */
export const intervalColumns = (quantity: string): readonly string[] =>
  LEVELS.map(([level]) => `${quantity}_${level}`);

/** Their cells from equally likely values; blank where there are none. */
export const intervalCells = (quantity: string, values: readonly number[]): Record<string, number | string> =>
  Object.fromEntries(
    LEVELS.map(([level, probability]) => [
      `${quantity}_${level}`,
      values.length > 0 ? shown(quantile(values, probability)) : "",
    ]),
  );
