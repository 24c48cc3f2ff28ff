import { cartridgeDropKPa } from "../cartridge-drop.ts";
import { tubeDrop } from "../tube-drop.ts";
import type { Booster, Conditions, Unit } from "../unit.ts";

const boosterRiseKPa = (booster: Booster, flowLPerH: number) =>
  Math.max(0, booster.shutOffRiseKPa * (1 - (flowLPerH / booster.openFlowLPerH) ** 2));

/** Pressure left for the element at a feed flow: falls with flow, so that the unit has one answer. */
export function feedSide(unit: Unit, conditions: Conditions) {
  const { cartridges, feedTubes = [], booster } = unit;
  const afterFilterKPa = (flowLPerH: number) => {
    let pressure = conditions.feedPressureKPaGauge;
    for (const cartridge of cartridges) pressure -= cartridgeDropKPa(cartridge, flowLPerH);
    for (const tube of feedTubes) {
      const loss = tubeDrop(tube, flowLPerH, conditions.temperatureC);
      pressure -= (loss.lowKPa + loss.highKPa) / 2;
    }
    return pressure;
  };
  const elementKPa = (flowLPerH: number) =>
    Math.max(0, afterFilterKPa(flowLPerH) + (booster ? boosterRiseKPa(booster, flowLPerH) : 0));
  return { afterFilterKPa, elementKPa };
}
