import { type FaultId, faults, type Unit } from "@tapside/reverse-osmosis";
import type { CauseId } from "./causes.ts";
import type { Hidden } from "./hidden.ts";
import { between, type Random } from "./random.ts";

/** From low to high, evenly in the logarithm where both ends are above zero: most faults are mild. */
const sizeOf = (low: number, high: number, share: number): number =>
  low > 0 ? low * (high / low) ** share : low + (high - low) * share;

const withUnit = (hidden: Hidden, part: Partial<Unit>): Hidden => ({
  ...hidden,
  situation: { ...hidden.situation, unit: { ...hidden.situation.unit, ...part } },
});

/** A fault of the forward model, at a size from its own range. */
function modelled(hidden: Hidden, id: FaultId, size: number): Hidden {
  return { ...hidden, situation: faults[id].apply(hidden.situation, size) };
}

const fault = (hidden: Hidden, id: FaultId, share: number): Hidden =>
  modelled(hidden, id, sizeOf(faults[id].low, faults[id].high, share));

const chargeBy = (hidden: Hidden, change: (charge: number) => number): Hidden =>
  withUnit(hidden, {
    tanks: hidden.situation.unit.tanks.map((tank) => ({
      ...tank,
      airChargeKPaGauge: Math.max(0, change(tank.airChargeKPaGauge)),
    })),
  });

/** Flow of the sound element at 4 bar: the measure for leaks past it. */
const roughPermeate = (hidden: Hidden): number =>
  hidden.situation.unit.elements.reduce((sum, one) => sum + one.areaM2 * one.waterLPerM2HBar * 4, 0);

/** Loss at 80 L/h of what takes a share of the feed pressure at the sound unit's own flow. */
function throttleKPa(hidden: Hidden, share: number): number {
  const { unit, conditions } = hidden.situation;
  const restrictor =
    unit.restrictor.kind === "rated" ? unit.restrictor.ratedLPerH : 2 * roughPermeate(hidden);
  const flow = (roughPermeate(hidden) + restrictor) * (1 - share);
  return share * conditions.feedPressureKPaGauge * (80 / flow) ** 1.3;
}

const chance = (random: Random, p: number): boolean => random() < p;

type Apply = (hidden: Hidden, share: number, random: Random) => Hidden;

/**
 * Every cause as a change of the truth; `share` from 0 (mild) to 1 (severe). What a cause changes besides its parameter
 * (hard water behind scale, chlorine behind an oxidised element) is drawn.
 * Source: ranges: those of `faults`, or assumed, common practice, no source.
 */
export const APPLY: Readonly<Record<CauseId, Apply>> = {
  healthy: (h) => h,
  fouledMembrane: (h, share, random) => ({
    ...modelled(h, "fouledMembrane", 0.78 * (0.25 / 0.78) ** share),
    foulingSeen: chance(random, 0.85),
  }),
  scaledMembrane: (h, share, random) => ({
    ...modelled(h, "scaledMembrane", 0.8 * (0.3 / 0.8) ** share),
    scaleSeen: chance(random, 0.92),
    hardnessMgPerL: chance(random, 0.5)
      ? Math.max(h.hardnessMgPerL, between(random, 120, 320))
      : h.hardnessMgPerL,
  }),
  oxidisedMembrane: (h, share, random) => ({
    ...oxidised(h, share, random),
    carbonPass: chance(random, 0.5) ? between(random, 0.1, 0.6) : h.carbonPass,
  }),
  sealLeak: (h, share) => ({
    ...modelled(h, "sealLeak", (roughPermeate(h) * sizeOf(0.006, 0.1, share)) / 4),
    oRingBad: true,
  }),
  brineSeal: (h, share) => ({ ...modelled(h, "brineSeal", 0.9 - 0.35 * share), brineSealBad: true }),
  restrictorBlocked: (h, share) => fault(h, "restrictorBlocked", 1 - share),
  drainLineBlocked: (h, share) => fault(h, "drainLineBlocked", 1 - share),
  restrictorTooBig: (h, share) => fault(h, "restrictorTooBig", share),
  preFilterClogged: (h, share) => fault(h, "preFilterClogged", share),
  shutOffSticking: (h, share) => modelled(h, "shutOffSticking", throttleKPa(h, sizeOf(0.18, 0.75, share))),
  lowFeedPressure: (h, share) => {
    const low = fault(h, "lowFeedPressure", 1 - share);
    const ratio = h.staticPressureKPaGauge / h.situation.conditions.feedPressureKPaGauge;
    return {
      ...low,
      staticPressureKPaGauge: low.situation.conditions.feedPressureKPaGauge * ratio,
    };
  },
  coldWater: (h, share) => fault(h, "coldWater", 1 - share),
  airChargeLow: (h, share) => chargeBy(h, (charge) => charge * 0.5 * (1 - share)),
  airChargeHigh: (h, share) => chargeBy(h, (charge) => charge + sizeOf(45, 140, share)),
  diaphragmRuptured: (h, share, random) => ({
    ...chargeBy(fault(h, "diaphragmRuptured", 1 - share), () => between(random, 0, 20)),
    diaphragmRuptured: chance(random, 0.95),
  }),
  tankValveClosed: (h) => ({ ...fault(h, "tankValveClosed", 1), tankValveShut: true }),
  checkValveFailed: (h, share) => modelled(h, "checkValveFailed", sizeOf(0.7, 200, share)),
  shutOffStuckOpen: (h) => fault(h, "shutOffStuckOpen", 1),
  bypassOpen: (h, share) => {
    const leak = sizeOf(faults.bypassOpen.low, faults.bypassOpen.high, share);
    return withUnit(h, { blendFraction: 1 - (1 - h.setBlend) * (1 - leak) });
  },
  tdsMeterOff: (h, share, random) => ({
    ...h,
    tdsGain: chance(random, 0.5) ? 0.6 + 0.28 * (1 - share) : 1.13 + 0.57 * share,
  }),
  sampleAfterStandby: (h, share) => ({ ...h, firstDrawFactor: sizeOf(2.6, 8, share) }),
  tubingReversed: (h) => fault(h, "tubingReversed", 1),
  carbonExhausted: (h, share) => ({ ...h, carbonPass: sizeOf(0.15, 0.9, share) }),
  softenerFailed: (h, share) => ({ ...h, hardnessMgPerL: sizeOf(90, 350, share) }),
  feedSolidsChanged: (h, share) => fault(h, "feedSolidsChanged", share),
  postFilterClogged: (h, share) => fault(h, "postFilterClogged", share),
  boosterWeak: (h, share) => fault(h, "boosterWeak", 1 - share),
  kinkedLine: (h, share, random) => ({ ...kinked(h, share, random), lineKinked: true }),
  demandAboveCapacity: (h, share) => ({ ...h, dailyLitres: 24 * roughPermeate(h) * sizeOf(0.7, 2.5, share) }),
  meterScaleSlip: (h, share) => ({ ...h, tdsGain: share < 0.5 ? 0.71 : 1.41, meterScaleWrong: true }),
  gaugeOff: (h, share, random) => ({
    ...h,
    gaugeGain: chance(random, 0.5) ? 0.85 - 0.3 * share : 1.18 + 0.4 * share,
  }),
};

/** One in six elements first loses flow before it passes more: a small tail of A below 1. */
function oxidised(hidden: Hidden, share: number, random: Random): Hidden {
  const more = fault(hidden, "oxidisedMembrane", share);
  if (!chance(random, 0.15)) return more;
  const loss = between(random, 0.5, 0.8);
  const { elements } = more.situation.unit;
  return withUnit(more, {
    elements: elements.map((one) => ({ ...one, waterLPerM2HBar: one.waterLPerM2HBar * loss })),
  });
}

/** A kink sits before the element, between element and tank, or behind the tank. */
function kinked(hidden: Hidden, share: number, random: Random): Hidden {
  const { cartridges, outletCartridges = [] } = hidden.situation.unit;
  const place = random();
  if (place < 0.35) {
    const kink = { id: "kink", dropKPa: throttleKPa(hidden, sizeOf(0.2, 0.8, share)), atLPerH: 80 };
    return withUnit(hidden, { cartridges: [...cartridges, kink] });
  }
  if (place < 0.6) {
    const { low, high } = faults.kinkedPermeateLine;
    const bore = sizeOf(low, high, 1 - share) * (roughPermeate(hidden) / 20) ** 0.4;
    return modelled(hidden, "kinkedPermeateLine", bore);
  }
  const kink = { id: "kink", dropKPa: sizeOf(60, 1500, share), atLPerH: 120 };
  return withUnit(hidden, { outletCartridges: [...outletCartridges, kink] });
}
