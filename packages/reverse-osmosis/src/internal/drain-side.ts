import { restrictorLPerH } from "../restrictor.ts";
import type { Unit } from "../unit.ts";
import { bracketedRoot } from "./bracketed-root.ts";
import { tubesLossKPa } from "./tubes-loss.ts";

/** Flow through restrictor and drain line at a pressure before them, L/h. */
export function drainSide(unit: Unit, temperatureC: number): (pressureKPa: number) => number {
  const { restrictor, drainLineShare = 1, drainTubes: tubes } = unit;
  const passed = (kPa: number) => drainLineShare * restrictorLPerH(restrictor, kPa, temperatureC);
  if (!tubes?.length) return passed;
  return (pressureKPa) => {
    const most = passed(pressureKPa);
    if (!(most > 0)) return 0;
    const excess = (q: number) => passed(pressureKPa - tubesLossKPa(tubes, q, temperatureC)) - q;
    const root = bracketedRoot(excess, 0, most, { x: 1e-13 * most, f: 1e-12 * most });
    return root.kind === "no-sign-change" ? 0 : root.x;
  };
}
