import type { Booster } from "../unit.ts";

/** Rise of a pump at a flow, kPa: a parabola from the rise at no flow to the flow at no rise; never below nothing. */
export const pumpRiseKPa = (pump: Booster, flowLPerH: number): number =>
  flowLPerH >= pump.openFlowLPerH
    ? 0
    : pump.shutOffRiseKPa * (1 - (Math.max(0, flowLPerH) / pump.openFlowLPerH) ** 2);
