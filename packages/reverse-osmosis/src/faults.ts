import type { Situation } from "./situation.ts";
import type { Tube } from "./tube-drop.ts";
import type { Unit } from "./unit.ts";

interface Fault {
  /** Where it sits: in the unit, the water that comes, how much is used, a meter, or the taking of a sample. */
  readonly kind: "unit" | "supply" | "use" | "meter" | "sample" | "setting";
  /** Smallest and largest size met; the size is a factor unless the name of the parameter says otherwise. */
  readonly low: number;
  readonly high: number;
  readonly parameter: string;
  /** Part without which there is no such fault. */
  readonly needs?: "booster" | "outletCartridges" | "tanks" | "softenerPasses" | "carbonPasses";
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

const weakBooster = (s: Situation, size: number): Situation => {
  const { booster, ...rest } = s.unit;
  if (!booster) return s;
  const { shutOffRiseKPa, openFlowLPerH } = booster;
  if (size === 0) return { ...s, unit: rest };
  return unitWith(s, {
    booster: { shutOffRiseKPa: shutOffRiseKPa * size, openFlowLPerH: openFlowLPerH * size },
  });
};

/** A nipped tube: a few centimetres with a small free bore. */
const kink = (freeBoreMm: number): Tube => ({ boreMm: freeBoreMm, lengthM: 0.03, fittingsK: 1.5 });

/**
 * Faults as changes of the unit's parameters, by cause id. Ranges: assumed, common practice, no source; meant to be edited.
 * Faults of meters and sampling change what is read, not the unit.
 */
export const faults = {
  fouledMembrane: {
    kind: "unit",
    low: 0.25,
    high: 0.78,
    parameter: "A factor",
    apply: (s, size) => elements(s, size, 1),
  },
  scaledMembrane: {
    kind: "unit",
    low: 0.3,
    high: 0.8,
    parameter: "A factor; B grows with it to 1.3 to 3",
    apply: (s, size) => elements(s, size, 1.3 + (1.7 * (0.8 - size)) / 0.5),
  },
  oxidisedMembrane: {
    kind: "unit",
    low: 2,
    high: 8,
    parameter: "B factor; A grows with it to 1.15 to 1.8",
    apply: (s, size) => elements(s, 1.15 + (0.65 * (size - 2)) / 6, size),
  },
  sealLeak: {
    kind: "unit",
    low: 0.02,
    high: 0.5,
    parameter: "leak, L/h per bar",
    apply: (s, size) => unitWith(s, { elements: s.unit.elements.map((e) => ({ ...e, leakLPerHBar: size })) }),
  },
  brineSeal: {
    kind: "unit",
    low: 0.55,
    high: 0.9,
    parameter: "A factor; polarisation grows with it to 1.3 to 2.2",
    apply: (s, size) => elements(s, size, 1, 1.3 + (0.9 * (0.9 - size)) / 0.35),
  },
  restrictorBlocked: {
    kind: "unit",
    low: 0.04,
    high: 0.55,
    parameter: "restrictor factor",
    apply: restrictor,
  },
  drainLineBlocked: {
    kind: "unit",
    low: 0.04,
    high: 0.55,
    parameter: "share of the restrictor's flow that passes",
    apply: (s, size) => unitWith(s, { drainLineShare: (s.unit.drainLineShare ?? 1) * size }),
  },
  restrictorTooBig: { kind: "unit", low: 1.8, high: 8, parameter: "restrictor factor", apply: restrictor },
  preFilterClogged: { kind: "unit", low: 5, high: 50, parameter: "drop factor", apply: clogged },
  shutOffSticking: {
    kind: "unit",
    low: 20,
    high: 300,
    parameter: "drop at 80 L/h after the filter, kPa",
    apply: (s, size) =>
      unitWith(s, {
        shutOff: { ...s.unit.shutOff, sticking: { id: "shutOff", dropKPa: size, atLPerH: 80 } },
      }),
  },
  lowFeedPressure: {
    kind: "supply",
    low: 100,
    high: 250,
    parameter: "feed pressure, kPa gauge",
    apply: (s, size) => ({
      ...s,
      conditions: { ...s.conditions, feedPressureKPaGauge: size },
      ...(s.staticFeedKPaGauge !== undefined && {
        staticFeedKPaGauge: (s.staticFeedKPaGauge * size) / s.conditions.feedPressureKPaGauge,
      }),
    }),
  },
  coldWater: {
    kind: "supply",
    low: 3,
    high: 9,
    parameter: "temperature, °C",
    apply: (s, size) => ({ ...s, conditions: { ...s.conditions, temperatureC: size } }),
  },
  airChargeLow: {
    kind: "unit",
    low: 0,
    high: 25,
    parameter: "air charge, kPa gauge",
    needs: "tanks",
    apply: charge,
  },
  airChargeHigh: {
    kind: "unit",
    low: 90,
    high: 200,
    parameter: "air charge, kPa gauge",
    needs: "tanks",
    apply: charge,
  },
  diaphragmRuptured: {
    kind: "unit",
    low: 0.04,
    high: 0.3,
    parameter: "gas volume factor",
    needs: "tanks",
    apply: (s, size) =>
      unitWith(s, {
        tanks: s.unit.tanks.map((tank) => ({ ...tank, volumeL: tank.volumeL * size, waterAtAirValve: true })),
      }),
  },
  tankValveClosed: {
    kind: "unit",
    low: 1,
    high: 1,
    parameter: "none",
    apply: (s) => unitWith(s, { tanks: [] }),
  },
  checkValveFailed: {
    kind: "unit",
    low: 0.5,
    high: 10,
    parameter: "back leak, L/h per bar",
    apply: (s, size) => unitWith(s, { backLeakLPerHBar: size }),
  },
  shutOffStuckOpen: {
    kind: "unit",
    low: 1,
    high: 1,
    parameter: "none",
    apply: (s) => unitWith(s, { shutOff: { ...s.unit.shutOff, stuckOpen: true } }),
  },
  bypassOpen: {
    kind: "unit",
    low: 0.03,
    high: 0.3,
    parameter: "share of feed in the product",
    apply: (s, size) => unitWith(s, { blendFraction: size }),
  },
  feedSolidsChanged: {
    kind: "supply",
    low: 1.5,
    high: 3,
    parameter: "feed factor",
    apply: (s, size) => ({
      ...s,
      conditions: { ...s.conditions, feedMgPerL: s.conditions.feedMgPerL * size },
    }),
  },
  postFilterClogged: {
    kind: "unit",
    low: 5,
    high: 150,
    parameter: "outlet drop factor",
    needs: "outletCartridges",
    apply: (s, size) =>
      unitWith(s, {
        outletCartridges: (s.unit.outletCartridges ?? []).map((c) => ({
          ...c,
          clogging: (c.clogging ?? 1) * size,
        })),
      }),
  },
  tubingReversed: {
    kind: "unit",
    low: 1,
    high: 1,
    parameter: "none",
    apply: (s) => unitWith(s, { linesReversed: true }),
  },
  carbonExhausted: {
    kind: "unit",
    low: 0.15,
    high: 0.9,
    parameter: "share of chlorine that passes",
    apply: (s, size) => unitWith(s, { carbonPasses: size }),
  },
  softenerFailed: {
    kind: "unit",
    low: 0.4,
    high: 1,
    parameter: "share of hardness that passes",
    needs: "softenerPasses",
    apply: (s, size) => unitWith(s, { softenerPasses: size }),
  },
  boosterWeak: {
    kind: "unit",
    low: 0,
    high: 0.6,
    parameter: "factor of rise and flow; 0 = its pressure switch keeps it off",
    needs: "booster",
    apply: weakBooster,
  },
  kinkedFeedLine: {
    kind: "unit",
    low: 1.2,
    high: 1.9,
    parameter: "free bore, mm",
    apply: (s, size) => unitWith(s, { feedTubes: [...(s.unit.feedTubes ?? []), kink(size)] }),
  },
  kinkedPermeateLine: {
    kind: "unit",
    low: 0.45,
    high: 0.8,
    parameter: "free bore, mm",
    apply: (s, size) => unitWith(s, { permeateTubes: [...(s.unit.permeateTubes ?? []), kink(size)] }),
  },
  kinkedOutletLine: {
    kind: "unit",
    low: 0.8,
    high: 2,
    parameter: "free bore, mm",
    apply: (s, size) => unitWith(s, { outletTubes: [...(s.unit.outletTubes ?? []), kink(size)] }),
  },
  airLock: {
    kind: "unit",
    low: 0.3,
    high: 0.8,
    parameter: "share of the element that is wet",
    apply: (s, size) =>
      unitWith(s, { elements: s.unit.elements.map((e) => ({ ...e, areaM2: e.areaM2 * size })) }),
  },
  deliveredRaisedOnPurpose: {
    kind: "setting",
    low: 15,
    high: 90,
    parameter: "added by a remineraliser, mg/L",
    apply: (s, size) => unitWith(s, { addedMgPerL: (s.unit.addedMgPerL ?? 0) + size }),
  },
  demandAboveCapacity: {
    kind: "use",
    low: 1.5,
    high: 4,
    parameter: "factor of the litres used a day",
    apply: (s, size) => ({ ...s, usedLPerDay: (s.usedLPerDay ?? 0) * size }),
  },
  tdsMeterOff: {
    kind: "meter",
    low: 0.6,
    high: 1.7,
    parameter: "factor of every dissolved-solids reading",
    apply: (s, size) => ({ ...s, solidsGain: (s.solidsGain ?? 1) * size }),
  },
  gaugeOff: {
    kind: "meter",
    low: 0.7,
    high: 1.4,
    parameter: "factor of every pressure reading",
    apply: (s, size) => ({ ...s, gaugeGain: (s.gaugeGain ?? 1) * size }),
  },
  sampleAfterStandby: {
    kind: "sample",
    low: 2,
    high: 8,
    parameter: "factor of the first water",
    apply: (s, size) => ({ ...s, firstWaterFactor: size }),
  },
} as const satisfies Record<string, Fault>;

export type FaultId = keyof typeof faults;
