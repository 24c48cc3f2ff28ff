import { pumpRiseKPa } from "./internal/pump-rise.ts";
import type { Booster } from "./unit.ts";

/**
 * What a booster adds to the feed at a flow, kPa; nothing while its switch keeps it off.
 *
 * Formula: rise(Q) = rise₀ (1 − (Q/Q₀)²); 0 below the feed pressure of its switch
 * Source: common practice, no source: a parabola through two points of the pump's curve.
 * Range: flows from 0 to the flow at no rise; beyond, the pump neither helps nor hinders.
 * Error: about a tenth of the rise without the maker's own curve.
 * @example
 * ```ts
 * import { boosterRiseKPa } from "@tapside/reverse-osmosis";
 * const booster = { shutOffRiseKPa: 300, openFlowLPerH: 200, offBelowKPaGauge: 70 };
 * boosterRiseKPa(booster, 200, 100); // => 225
 * boosterRiseKPa(booster, 60, 100); // => 0
 * ```
 */
export const boosterRiseKPa = (booster: Booster, feedPressureKPaGauge: number, flowLPerH: number): number =>
  feedPressureKPaGauge < (booster.offBelowKPaGauge ?? 0) ? 0 : pumpRiseKPa(booster, flowLPerH);
