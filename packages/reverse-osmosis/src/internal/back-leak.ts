import type { Unit } from "../unit.ts";
import { bracketedRoot } from "./bracketed-root.ts";
import { drainSide } from "./drain-side.ts";
import { channelOf } from "./elements-flow.ts";

/**
 * Flow from the tank through a leaking check valve, backwards through the element and down the drain while no feed comes, L/h.
 * Valve and element are in series; the restrictor lets it out.
 */
export function backLeakLPerH(unit: Unit, tankKPaGauge: number, temperatureC: number): number {
  const valve = (unit.backLeakLPerHBar ?? 0) / 100;
  if (!(valve > 0 && tankKPaGauge > 0) || unit.storage === "vented") return 0;
  const element = unit.elements.reduce((sum, e) => {
    const { waterLPerHKPa } = channelOf(e, temperatureC, 1);
    return sum + waterLPerHKPa + (e.leakLPerHBar ?? 0) / 100;
  }, 0);
  const both = (valve * element) / (valve + element);
  const through = drainSide(unit, temperatureC);
  const most = both * tankKPaGauge;
  const root = bracketedRoot((q) => through(tankKPaGauge - q / both) - q, 0, most, { x: 1e-12, f: 1e-9 * most });
  return root.kind === "no-sign-change" ? 0 : root.x;
}
