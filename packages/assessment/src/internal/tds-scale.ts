import type { TdsScale } from "@tapside/records";

/** Rows of one conversion table at 25 °C: µS/cm and what a meter shows on each scale. Source: a conductivity meter's manual, common practice. */
const ROWS = [
  { EC: 23, KCl: 11.6, NaCl: 10.7, "442": 14.74 },
  { EC: 84, KCl: 40.38, NaCl: 38.04, "442": 50.5 },
  { EC: 447, KCl: 225.6, NaCl: 215.5, "442": 300 },
  { EC: 1413, KCl: 744.7, NaCl: 702.1, "442": 1000 },
] as const;

export type SolidsColumn = TdsScale | "EC";

/** A dissolved-solids reading on another scale: straight in logarithms between rows, in proportion outside them. */
export function convertTds(value: number, from: SolidsColumn, to: SolidsColumn): number {
  if (from === to || !(value > 0)) return value;
  const first = ROWS[0];
  const last = ROWS[ROWS.length - 1]!;
  if (value <= first[from]) return (value * first[to]) / first[from];
  if (value >= last[from]) return (value * last[to]) / last[from];
  const upper = ROWS.findIndex((row) => row[from] >= value);
  const [a, b] = [ROWS[upper - 1]!, ROWS[upper]!];
  const share = Math.log(value / a[from]) / Math.log(b[from] / a[from]);
  return a[to] * (b[to] / a[to]) ** share;
}
