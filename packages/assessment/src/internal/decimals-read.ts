import type { Reading } from "@tapside/records";

/** How many decimals the meter showed, where a figure is the reading itself in its own unit: it is never told with more. */
export function decimalsRead(reading: Reading | undefined, unit: string): { readonly decimalsRead?: number } {
  if (!reading || reading.unit !== unit) return {};
  return { decimalsRead: /[.,](\d+)/.exec(reading.raw)?.[1]?.length ?? 0 };
}
