import type { FurtherSlotId, InstrumentKind, PortId, SlotId } from "./kinds.ts";

export type SlotQuantity =
  | "dissolvedSolids"
  | "temperature"
  | "chlorine"
  | "pressureGauge"
  | "flow"
  | "volume"
  | "hardness"
  | "dissolved"
  | "pH"
  | "length"
  | "time";

export interface Range {
  readonly low: number;
  readonly high: number;
}

/** What may be typed into one slot. */
export interface Slot {
  readonly port: PortId;
  readonly quantity: SlotQuantity;
  /** Taken up when no instrument says otherwise. */
  readonly unit: string;
  /** Units offered. "s" means seconds for the cup's volume. */
  readonly units: readonly string[];
  /** Unit of both ranges: mg/L, °C, kPa gauge, L/h, L or mg/L CaCO3. */
  readonly baseUnit: string;
  /** Outside of it a number is refused: it cannot be this quantity. */
  readonly hard: Range;
  /** Outside of it a number is taken and asked about. */
  readonly soft: Range;
  /** Decimals shown in the default unit. */
  readonly decimals: number;
  readonly instrument: InstrumentKind;
  /** Cup offered first for a timed flow. */
  readonly volumeL?: number;
}

type Kind = Omit<Slot, "port" | "soft">;

const solids: Kind = {
  quantity: "dissolvedSolids",
  unit: "ppm",
  units: ["ppm", "µS/cm"],
  baseUnit: "mg/L",
  hard: { low: 0, high: 50_000 },
  decimals: 0,
  instrument: "tds",
};

const pressure: Kind = {
  quantity: "pressureGauge",
  unit: "psi",
  units: ["psi", "bar", "kPa"],
  baseUnit: "kPa",
  hard: { low: 0, high: 2500 },
  decimals: 0,
  instrument: "pressure",
};

const flow: Kind = {
  quantity: "flow",
  unit: "s",
  units: ["s", "mL/min", "L/min", "L/h"],
  baseUnit: "L/h",
  hard: { low: 0, high: 2000 },
  decimals: 1,
  instrument: "flow",
  volumeL: 0.25,
};

const chlorine: Kind = {
  quantity: "chlorine",
  unit: "mg/L",
  units: ["mg/L", "ppm"],
  baseUnit: "mg/L",
  hard: { low: 0, high: 20 },
  decimals: 2,
  instrument: "chlorine",
};

const hardness: Kind = {
  quantity: "hardness",
  unit: "gpg",
  units: ["gpg", "°dH", "°fH", "mg/L CaCO3", "mmol/L"],
  baseUnit: "mg/L CaCO3",
  hard: { low: 0, high: 5000 },
  decimals: 0,
  instrument: "hardness",
};

const alkalinity: Kind = { ...hardness, unit: "mg/L CaCO3", units: ["mg/L CaCO3", "°dH", "°fH"] };

const dissolved: Kind = {
  quantity: "dissolved",
  unit: "mg/L",
  units: ["mg/L", "ppm"],
  baseUnit: "mg/L",
  hard: { low: 0, high: 20_000 },
  decimals: 0,
  instrument: "kit",
};

const acidity: Kind = {
  quantity: "pH",
  unit: "pH",
  units: ["pH"],
  baseUnit: "pH",
  hard: { low: 0, high: 14 },
  decimals: 1,
  instrument: "pH",
};

const length: Kind = {
  quantity: "length",
  unit: "mm",
  units: ["mm", "cm", "in"],
  baseUnit: "mm",
  hard: { low: 0, high: 20_000 },
  decimals: 0,
  instrument: "length",
};

/** Nothing flowing is an answer here, so a rate can be typed as well as timed. */
const leak: Kind = { ...flow, volumeL: 0.5 };

const further: Readonly<Record<FurtherSlotId, Slot>> = {
  firstDrawTds: { ...solids, port: "delivered", soft: { low: 0, high: 800 } },
  standardSolution: { ...solids, port: "bottle", soft: { low: 100, high: 3000 } },
  drainTds: { ...solids, port: "drain", soft: { low: 10, high: 4000 } },
  drainFlowFeedClosed: { ...leak, port: "drain", soft: { low: 0, high: 60 } },
  drainFlowTankFull: { ...leak, port: "drain", soft: { low: 0, high: 100 } },
  postFilterPressure: { ...pressure, port: "delivered", soft: { low: 20, high: 600 } },
  deliveredFlow: { ...flow, volumeL: 1, port: "delivered", soft: { low: 10, high: 1500 } },
  chlorineFreeBefore: { ...chlorine, port: "beforeFilter", soft: { low: 0, high: 4 } },
  chlorineFreeAfter: { ...chlorine, port: "afterFilter", soft: { low: 0, high: 1 } },
  deliveredChlorine: { ...chlorine, port: "delivered", soft: { low: 0, high: 1 } },
  deliveredHardness: { ...hardness, port: "delivered", soft: { low: 0, high: 200 } },
  deliveredAlkalinity: { ...alkalinity, port: "delivered", soft: { low: 0, high: 200 } },
  deliveredChloride: { ...dissolved, port: "delivered", soft: { low: 0, high: 100 } },
  deliveredSilica: { ...dissolved, port: "delivered", soft: { low: 0, high: 30 } },
  deliveredPh: { ...acidity, port: "delivered", soft: { low: 4.5, high: 9.5 } },
  feedAlkalinity: { ...alkalinity, port: "feed", soft: { low: 0, high: 600 } },
  feedChloride: { ...dissolved, port: "feed", soft: { low: 0, high: 600 } },
  feedSilica: { ...dissolved, port: "feed", soft: { low: 0, high: 80 } },
  feedPh: { ...acidity, port: "feed", soft: { low: 6, high: 9.5 } },
  chloramine: { ...chlorine, port: "feed", soft: { low: 0, high: 4 } },
  peakPressure: { ...pressure, port: "feed", soft: { low: 100, high: 800 } },
  nightPressure: { ...pressure, port: "feed", soft: { low: 150, high: 900 } },
  drainGap: { ...length, port: "drain", soft: { low: 10, high: 300 } },
  drainHeight: { ...length, unit: "cm", port: "drain", soft: { low: 50, high: 2500 } },
  hourCounter: {
    port: "hourMeter",
    quantity: "time",
    unit: "h",
    units: ["h"],
    baseUnit: "h",
    hard: { low: 0, high: 1e7 },
    soft: { low: 0, high: 1e6 },
    decimals: 1,
    instrument: "meter",
  },
};

/** The slots nobody is asked for: taken up when they are wanted, in the order of the water. */
export const FURTHER_SLOTS = Object.keys(further) as readonly FurtherSlotId[];

/** Drawn before the tank is read again, unless said otherwise: what an ordinary bucket holds, L. */
export const USUAL_DRAW_L = 8;

/**
 * Every slot: where, what, in which units, and what is plausible.
 * Source: ranges are common practice for small units on town water, no published source.
 */
export const SLOTS: Readonly<Record<SlotId, Slot>> = {
  feedTds: { ...solids, port: "feed", soft: { low: 10, high: 2000 } },
  feedTemperature: {
    port: "feed",
    quantity: "temperature",
    unit: "°C",
    units: ["°C", "°F"],
    baseUnit: "°C",
    hard: { low: -5, high: 100 },
    soft: { low: 2, high: 40 },
    decimals: 1,
    instrument: "temperature",
  },
  chlorineBefore: { ...chlorine, port: "beforeFilter", soft: { low: 0, high: 4 } },
  chlorineAfter: { ...chlorine, port: "afterFilter", soft: { low: 0, high: 1 } },
  staticPressure: { ...pressure, port: "feed", soft: { low: 150, high: 800 } },
  beforeFilterPressure: { ...pressure, port: "beforeFilter", soft: { low: 100, high: 800 } },
  afterFilterPressure: { ...pressure, port: "afterFilter", soft: { low: 100, high: 800 } },
  permeateFlow: { ...flow, port: "permeateToWaste", soft: { low: 1, high: 150 } },
  drainFlow: { ...flow, port: "drain", soft: { low: 2, high: 400 } },
  permeateTds: { ...solids, port: "permeateToWaste", soft: { low: 0, high: 200 } },
  deliveredTds: { ...solids, port: "delivered", soft: { low: 0, high: 500 } },
  tankFullPressure: { ...pressure, port: "tank", soft: { low: 70, high: 600 } },
  drawnVolume: {
    port: "tank",
    quantity: "volume",
    unit: "L",
    units: ["L", "gal"],
    baseUnit: "L",
    hard: { low: 0, high: 500 },
    soft: { low: 0.5, high: 60 },
    decimals: 1,
    instrument: "flow",
  },
  tankAfterPressure: { ...pressure, port: "tank", soft: { low: 20, high: 500 } },
  airCharge: { ...pressure, port: "tank", hard: { low: 0, high: 700 }, soft: { low: 20, high: 150 } },
  waterMeter: {
    port: "meter",
    quantity: "volume",
    unit: "m³",
    units: ["m³", "L", "gal"],
    baseUnit: "L",
    hard: { low: 0, high: 1e9 },
    soft: { low: 0, high: 1e8 },
    decimals: 2,
    instrument: "meter",
  },
  hardness: { ...hardness, port: "feed", soft: { low: 0, high: 800 } },
  ...further,
};
