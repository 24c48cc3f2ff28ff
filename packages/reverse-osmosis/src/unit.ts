import type { Cartridge } from "./cartridge-drop.ts";
import type { Element } from "./element.ts";
import type { Restrictor } from "./restrictor.ts";
import type { Tank } from "./tank.ts";
import type { Tube } from "./tube-drop.ts";

/** A booster by two points of its curve: rise at no flow, and flow at no rise; a parabola between. */
export interface Booster {
  readonly shutOffRiseKPa: number;
  readonly openFlowLPerH: number;
  /** A switch keeps it off while the feed pressure before the unit is lower. */
  readonly offBelowKPaGauge?: number;
}

/**
 * A permeate pump: two pistons on one rod between element and tank. Concentrate on its way to the drain pushes the one, the other lifts
 * permeate; between strokes the permeate itself pushes both back and the concentrate runs free.
 */
export interface PermeatePump {
  /** Concentrate piston's area over the permeate's: concentrate per permeate lifted, and the most the pressure is raised. */
  readonly strokeRatio: number;
  /** What seals and valves take of the pressure it lifts to. */
  readonly lossKPa: number;
  /** Share of the pushing concentrate that slips past the piston. */
  readonly slip: number;
  /** Permeate pressure that opens its inlet and pushes the pistons back: what the element feels while the pump keeps up. */
  readonly inletKPa: number;
  /** It stands still: water passes its valves both ways as through a tube. */
  readonly stuck?: boolean;
}

/** Hydraulic shut-off: closes at `ratio` of the feed pressure, opens again `hysteresis` of the feed pressure lower. */
export interface ShutOff {
  readonly ratio: number;
  readonly hysteresis?: number;
  readonly stuckOpen?: boolean;
  /** Pressure lost in a valve that does not open fully, after the filters' gauge. */
  readonly sticking?: Cartridge;
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
  /** Share of the restrictor's flow that a blocked drain line still lets pass; absent = all. */
  readonly drainLineShare?: number;
  readonly shutOff: ShutOff;
  /** What the leaking check valve passes back from the tank, L/h per bar; absent = it holds. */
  readonly backLeakLPerHBar?: number;
  /** Permeate and drain lines exchanged behind the restrictor. */
  readonly linesReversed?: boolean;
  readonly tanks: readonly Tank[];
  /** A vented tank is filled without back-pressure to its float; its own pump makes the pressure at the tap. */
  readonly storage?: "pressurised" | "vented";
  /** Pump behind a vented tank, by two points of its curve. */
  readonly rePressure?: Booster;
  readonly permeateTubes?: readonly Tube[];
  /** Between element and tank, driven by the concentrate behind the restrictor; not with a vented tank. */
  readonly permeatePump?: PermeatePump;
  /** Share of feed water mixed into the permeate on purpose or by a leaking bypass, of the mixed flow. */
  readonly blendFraction?: number;
  /** Dissolved solids added by a remineralising cartridge, mg/L. */
  readonly addedMgPerL?: number;
  readonly outletCartridges?: readonly Cartridge[];
  readonly outletTubes?: readonly Tube[];
  /** Tap or fill valve wide open; without it 240 L/h at 200 kPa is assumed. */
  readonly outletValve?: Restrictor;
  /** Share of chlorine that passes the carbon; absent = no carbon is known of. */
  readonly carbonPasses?: number;
  /** Share of hardness that passes the softener; absent = there is none. */
  readonly softenerPasses?: number;
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
