import type { Cartridge } from "./cartridge-drop.ts";
import type { Element } from "./element.ts";
import type { Restrictor } from "./restrictor.ts";
import type { Tank } from "./tank.ts";
import type { Tube } from "./tube-drop.ts";

/** A booster by two points of its curve: rise at no flow, and flow at no rise; a parabola between. */
export interface Booster {
  readonly shutOffRiseKPa: number;
  readonly openFlowLPerH: number;
}

/** Parts in the order the water meets them. A part that is not there is left out. */
export interface Unit {
  /** Softener, sediment, carbon: whatever loses pressure before the element. */
  readonly cartridges: readonly Cartridge[];
  readonly feedTubes?: readonly Tube[];
  readonly booster?: Booster;
  readonly elements: readonly Element[];
  readonly arrangement?: "series" | "parallel";
  readonly restrictor: Restrictor;
  readonly drainTubes?: readonly Tube[];
  /** Hydraulic shut-off: closes at `ratio` of the feed pressure, opens again `hysteresis` of the feed pressure lower. */
  readonly shutOff: { readonly ratio: number; readonly hysteresis?: number; readonly stuckOpen?: boolean };
  /** Flow back from the tank through the element per bar when the check valve leaks, L/h per bar; absent = it holds. */
  readonly backLeakLPerHBar?: number;
  readonly tanks: readonly Tank[];
  /** A vented tank is filled without back-pressure; its own pump makes the pressure at the tap. */
  readonly storage?: "pressurised" | "vented";
  readonly permeateTubes?: readonly Tube[];
  /** Share of feed water mixed into the permeate on purpose or by a leaking bypass, of the mixed flow. */
  readonly blendFraction?: number;
  /** Dissolved solids added by a remineralising cartridge, mg/L. */
  readonly addedMgPerL?: number;
  readonly outletCartridges?: readonly Cartridge[];
  readonly outletTubes?: readonly Tube[];
  /** Absolute pressure outside, kPa; `atmosphericPressureKPa(altitude)`. */
  readonly atmosphericKPa: number;
}

export interface Conditions {
  /** Before the first part, flowing. */
  readonly feedPressureKPaGauge: number;
  readonly temperatureC: number;
  /** Dissolved solids as sodium chloride equivalent. */
  readonly feedMgPerL: number;
  /** 0 when the permeate runs to waste. */
  readonly tankPressureKPaGauge: number;
}
