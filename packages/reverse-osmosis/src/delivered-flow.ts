import { cartridgeDropKPa } from "./cartridge-drop.ts";
import { fallingRoot } from "./internal/bracketed-root.ts";
import { pumpRiseKPa } from "./internal/pump-rise.ts";
import { tubesLossKPa } from "./internal/tubes-loss.ts";
import { type Restrictor, restrictorLPerH } from "./restrictor.ts";
import type { Unit } from "./unit.ts";

/** Assumed tap or fill valve, wide open. Source: common practice, no source. */
const usualValve: Restrictor = { kind: "rated", ratedLPerH: 240, ratedKPa: 200 };

/**
 * Flow at the tap or the appliance's fill valve, wide open, from the tank or the pump behind a vented one, L/h.
 *
 * Formula: valve(P + rise(Q) − cartridges(Q) − tubes(Q)) = Q; the pressure beyond the valve is the outside's
 * Source: laws of `restrictorLPerH`, `cartridgeDropKPa` and `tubeDrop`.
 * Range: the first seconds of a draw, before the tank's pressure falls.
 * Error: that of the valve: 240 L/h at 200 kPa is assumed when it is not given.
 * @example
 * ```ts
 * import { deliveredLPerH, simpleUnit } from "@tapside/reverse-osmosis";
 * const unit = simpleUnit({ areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65 }, { ratedLPerH: 45, ratedKPa: 414 });
 * deliveredLPerH(unit, 200, 15); // => 240
 * deliveredLPerH({ ...unit, outletCartridges: [{ id: "carbon", dropKPa: 150, atLPerH: 120 }] }, 200, 15); // => 120
 * ```
 */
export function deliveredLPerH(unit: Unit, tankKPaGauge: number, temperatureC: number): number {
  const { outletCartridges = [], outletTubes = [], rePressure, storage } = unit;
  const valve = unit.outletValve ?? usualValve;
  const atValve = (flow: number) => {
    let pressure = storage === "vented" ? (rePressure ? pumpRiseKPa(rePressure, flow) : 0) : tankKPaGauge;
    for (const cartridge of outletCartridges) pressure -= cartridgeDropKPa(cartridge, flow);
    return pressure - tubesLossKPa(outletTubes, flow, temperatureC);
  };
  const most = restrictorLPerH(valve, atValve(0), temperatureC);
  if (!(most > 0)) return 0;
  const excess = (flow: number) => restrictorLPerH(valve, atValve(flow), temperatureC) - flow;
  const root = fallingRoot(
    excess,
    { low: 0, high: most, guess: most / 2 },
    { x: 1e-9 * most, f: 1e-6 * most },
  );
  return root.kind === "no-sign-change" ? 0 : root.x;
}
