import { bracketedRoot } from "./internal/bracketed-root.ts";
import { drainSide } from "./internal/drain-side.ts";
import { channelOf } from "./internal/elements-flow.ts";
import type { Unit } from "./unit.ts";

/**
 * Water that runs from the full tank back through a leaking check valve, the element and the restrictor to the drain, L/h, with
 * the feed shut. 0 while the check valve holds.
 *
 * Formula: Q = k(P_tank − P_r(Q)), 1/k = 1/k_valve + 1/(A·TCF·S); P_r is what the restrictor needs to pass Q
 * Source: the element taken as symmetric, which agrees with a worked visit (158 falling to 141 mL/min); common practice, no source.
 * Range: the feed side washed through with permeate, so that no osmotic pressure is left.
 * Error: reverse permeability of a real element is not published; reverse pressure can tear it (common practice).
 * @example
 * ```ts
 * import { simpleUnit, standingLeakLPerH } from "@tapside/reverse-osmosis";
 * const element = { areaM2: 1.1, waterLPerM2HBar: 4.3, saltLPerM2H: 0.66 };
 * const sound = simpleUnit(element, { ratedLPerH: 35, ratedKPa: 414 });
 * standingLeakLPerH({ ...sound, backLeakLPerHBar: 1000 }, 255.1, 21); // => 9.42
 * ```
 */
export function standingLeakLPerH(unit: Unit, tankKPaGauge: number, temperatureC: number): number {
  const { backLeakLPerHBar: valve = 0 } = unit;
  if (!(valve > 0 && tankKPaGauge > 0)) return 0;
  const elements = unit.elements.reduce(
    (sum, element) => sum + channelOf(element, temperatureC, 1).waterLPerHKPa,
    0,
  );
  if (!(elements > 0)) return 0;
  const perKPa = 1 / (100 / valve + 1 / elements);
  const most = perKPa * tankKPaGauge;
  const through = drainSide(unit, temperatureC);
  const excess = (flow: number) => through(tankKPaGauge - flow / perKPa) - flow;
  const root = bracketedRoot(excess, 0, most, { x: most * 1e-12, f: most * 1e-10 });
  return root.kind === "no-sign-change" ? 0 : root.x;
}
