import type { Conditions, Unit } from "./unit.ts";

/** A unit and its water together: what a fault changes. */
export interface Situation {
  readonly unit: Unit;
  readonly conditions: Conditions;
}

interface Fault {
  /** Smallest and largest size met; the size is a factor unless the name of the parameter says otherwise. */
  readonly low: number;
  readonly high: number;
  readonly parameter: string;
  readonly apply: (situation: Situation, size: number) => Situation;
}

const unitWith = (s: Situation, part: Partial<Unit>): Situation => ({ ...s, unit: { ...s.unit, ...part } });
const elements = (s: Situation, water: number, salt: number, polarisation = 1): Situation =>
  unitWith(s, {
    elements: s.unit.elements.map((element) => ({
      ...element,
      waterLPerM2HBar: element.waterLPerM2HBar * water,
      saltLPerM2H: element.saltLPerM2H * salt,
      polarisation: element.polarisation * polarisation,
    })),
  });
const restrictor = (s: Situation, scale: number) =>
  unitWith(s, { restrictor: { ...s.unit.restrictor, scale: (s.unit.restrictor.scale ?? 1) * scale } });
const clogged = (s: Situation, size: number) =>
  unitWith(s, {
    cartridges: s.unit.cartridges.map((c) => ({ ...c, clogging: (c.clogging ?? 1) * size })),
  });
const charge = (s: Situation, airChargeKPaGauge: number) =>
  unitWith(s, { tanks: s.unit.tanks.map((tank) => ({ ...tank, airChargeKPaGauge })) });

/**
 * Faults as changes of the unit's parameters, by cause id. Ranges: assumed, common practice, no source; meant to be edited.
 * Causes that change no parameter of the unit (chlorine, hardness, meter errors, first draw) belong to the readings.
 */
export const faults = {
  fouledMembrane: { low: 0.25, high: 0.78, parameter: "A factor", apply: (s, size) => elements(s, size, 1) },
  scaledMembrane: {
    low: 0.3,
    high: 0.8,
    parameter: "A factor; B grows with it to 1.3 to 3",
    apply: (s, size) => elements(s, size, 1.3 + (1.7 * (0.8 - size)) / 0.5),
  },
  oxidisedMembrane: {
    low: 2,
    high: 8,
    parameter: "B factor; A grows with it to 1.15 to 1.8",
    apply: (s, size) => elements(s, 1.15 + (0.65 * (size - 2)) / 6, size),
  },
  sealLeak: {
    low: 0.02,
    high: 0.5,
    parameter: "leak, L/h per bar",
    apply: (s, size) => unitWith(s, { elements: s.unit.elements.map((e) => ({ ...e, leakLPerHBar: size })) }),
  },
  brineSeal: {
    low: 0.55,
    high: 0.9,
    parameter: "A factor; polarisation grows with it to 1.3 to 2.2",
    apply: (s, size) => elements(s, size, 1, 1.3 + (0.9 * (0.9 - size)) / 0.35),
  },
  restrictorBlocked: { low: 0.04, high: 0.55, parameter: "restrictor factor", apply: restrictor },
  drainLineBlocked: { low: 0.04, high: 0.55, parameter: "restrictor factor", apply: restrictor },
  restrictorTooBig: { low: 1.8, high: 8, parameter: "restrictor factor", apply: restrictor },
  preFilterClogged: { low: 5, high: 50, parameter: "drop factor", apply: clogged },
  shutOffSticking: {
    low: 20,
    high: 300,
    parameter: "drop at 80 L/h after the filter, kPa",
    apply: (s, size) =>
      unitWith(s, { cartridges: [...s.unit.cartridges, { id: "shutOff", dropKPa: size, atLPerH: 80 }] }),
  },
  lowFeedPressure: {
    low: 100,
    high: 250,
    parameter: "feed pressure, kPa gauge",
    apply: (s, size) => ({ ...s, conditions: { ...s.conditions, feedPressureKPaGauge: size } }),
  },
  coldWater: {
    low: 3,
    high: 9,
    parameter: "temperature, °C",
    apply: (s, size) => ({ ...s, conditions: { ...s.conditions, temperatureC: size } }),
  },
  airChargeLow: { low: 0, high: 25, parameter: "air charge, kPa gauge", apply: charge },
  airChargeHigh: { low: 90, high: 200, parameter: "air charge, kPa gauge", apply: charge },
  diaphragmRuptured: {
    low: 0.04,
    high: 0.3,
    parameter: "gas volume factor",
    apply: (s, size) =>
      unitWith(s, { tanks: s.unit.tanks.map((tank) => ({ ...tank, volumeL: tank.volumeL * size })) }),
  },
  tankValveClosed: { low: 1, high: 1, parameter: "none", apply: (s) => unitWith(s, { tanks: [] }) },
  checkValveFailed: {
    low: 0.5,
    high: 10,
    parameter: "back leak, L/h per bar",
    apply: (s, size) => unitWith(s, { backLeakLPerHBar: size }),
  },
  shutOffStuckOpen: {
    low: 1,
    high: 1,
    parameter: "none",
    apply: (s) => unitWith(s, { shutOff: { ...s.unit.shutOff, stuckOpen: true } }),
  },
  bypassOpen: {
    low: 0.03,
    high: 0.3,
    parameter: "share of feed in the product",
    apply: (s, size) => unitWith(s, { blendFraction: size }),
  },
  feedSolidsChanged: {
    low: 1.5,
    high: 3,
    parameter: "feed factor",
    apply: (s, size) => ({
      ...s,
      conditions: { ...s.conditions, feedMgPerL: s.conditions.feedMgPerL * size },
    }),
  },
  postFilterClogged: {
    low: 5,
    high: 150,
    parameter: "outlet drop factor",
    apply: (s, size) =>
      unitWith(s, {
        outletCartridges: (s.unit.outletCartridges ?? []).map((c) => ({
          ...c,
          clogging: (c.clogging ?? 1) * size,
        })),
      }),
  },
} as const satisfies Record<string, Fault>;

export type FaultId = keyof typeof faults;
