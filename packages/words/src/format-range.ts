import { inSign } from "./in-sign.ts";

/**
 * "0.25–0.29": both ends to the first digit of the half width, so that an interval shows no more than it is wide. The ends round to the
 * nearest, hence move by a quarter of the width at most.
 */
export function formatRange(
  { low, high }: { readonly low: number; readonly high: number },
  decimalSign: "." | "," = ".",
): string {
  const half = Math.abs(high - low) / 2;
  const decimals = half > 0 ? Math.min(6, Math.max(0, -Math.floor(Math.log10(half)))) : 2;
  return [low, high].map((end) => inSign(end.toFixed(decimals), decimalSign)).join("–");
}
