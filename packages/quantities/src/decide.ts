import type { Uncertain } from "./uncertain.ts";

/** A limit: at least `low`, at most `high`, or both. */
export interface Limits {
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

export interface Decision {
  readonly verdict: "within" | "outside" | "tooClose";
  /** Signed distance beyond the nearer limit in units of U = 2u; negative inside. */
  readonly distance: number;
  readonly rule: DecisionRule;
}

/** "guard-band-U" keeps U clear of the limit; "simple" compares the value alone. */
export type DecisionRule = "guard-band-U" | "simple";

/**
 * Within only when the value clears the limit by its expanded uncertainty U = 2u; outside only when it lies beyond by U;
 * anything between is too close to say. Source: ILAC-G8:09/2019 and JCGM 106 as quoted second hand: a guard band w = U
 * leaves less than 2.5 % risk of a false "within". The rule "simple" (simple acceptance in the same documents) shares the
 * risk: up to 50 % at the limit itself, and never says too close.
 *
 * @example
 * ```ts
 * import { decide } from "@tapside/quantities";
 * decide({ value: 95.2, u: 0.244 }, { low: 95 }).verdict; // => "tooClose"
 * ```
 */
export function decide(measured: Uncertain, limits: Limits, rule: DecisionRule = "guard-band-U"): Decision {
  const expanded = Math.max(2 * measured.u, 1e-12);
  const beyondHigh = limits.high === undefined ? -Infinity : (measured.value - limits.high) / expanded;
  const beyondLow = limits.low === undefined ? -Infinity : (limits.low - measured.value) / expanded;
  const distance = Math.max(beyondHigh, beyondLow);
  if (rule === "simple") return { verdict: distance > 0 ? "outside" : "within", distance, rule };
  const verdict = distance >= 1 ? "outside" : distance <= -1 ? "within" : "tooClose";
  return { verdict, distance, rule };
}
