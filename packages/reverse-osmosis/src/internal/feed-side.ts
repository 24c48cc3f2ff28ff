import { boosterRiseKPa } from "../booster-rise.ts";
import { cartridgeDropKPa } from "../cartridge-drop.ts";
import type { Conditions, Unit } from "../unit.ts";
import { tubesLossKPa } from "./tubes-loss.ts";

/** Pressure left at the filters' gauge and at the element: falls with flow, so that the unit has one answer. */
export function feedSide(unit: Unit, conditions: Pick<Conditions, "feedPressureKPaGauge" | "temperatureC">) {
  const { cartridges, feedTubes, booster, shutOff } = unit;
  const { feedPressureKPaGauge, temperatureC } = conditions;
  const left = (flowLPerH: number) => {
    let pressure = feedPressureKPaGauge;
    for (const cartridge of cartridges) pressure -= cartridgeDropKPa(cartridge, flowLPerH);
    if (feedTubes) pressure -= tubesLossKPa(feedTubes, flowLPerH, temperatureC);
    return booster ? pressure + boosterRiseKPa(booster, feedPressureKPaGauge, flowLPerH) : pressure;
  };
  const { sticking } = shutOff;
  return {
    /** After filters and booster, before the shut-off. */
    afterFilterKPa: (flowLPerH: number) => Math.max(0, left(flowLPerH)),
    elementKPa: (flowLPerH: number) =>
      Math.max(0, sticking ? left(flowLPerH) - cartridgeDropKPa(sticking, flowLPerH) : left(flowLPerH)),
  };
}
