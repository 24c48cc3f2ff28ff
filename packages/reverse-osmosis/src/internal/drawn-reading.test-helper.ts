import { boosterRiseKPa } from "../booster-rise.ts";
import type { ExpectedPort, Scatter, Today } from "../expected-readings.ts";
import { filling } from "../filling.ts";
import { operatingPoint } from "../operating-point.ts";
import type { Unit } from "../unit.ts";

/** Seeded normal deviates: a 32-bit mixing generator (public-domain constants) and Box–Muller. */
export function normals(seed: number): () => number {
  let state = seed;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

/** A sound unit drawn with the scatter, then read with the meters' own: the whole model each time, no slopes. */
export function drawnReading(
  unit: Unit,
  today: Today,
  normal: () => number,
  s: Scatter,
): Partial<Record<ExpectedPort, number>> {
  // Elements of one unit come from one lot and tanks are charged by one hand: they are off together, the wider assumption.
  const [water, salt, charge] = [normal(), normal(), normal()];
  const drawn: Unit = {
    ...unit,
    cartridges: unit.cartridges.map((c) => ({
      ...c,
      dropKPa: c.dropKPa * Math.exp(normal() * s.filterDropRelative),
    })),
    elements: unit.elements.map((e) => ({
      ...e,
      waterLPerM2HBar: e.waterLPerM2HBar * Math.exp(water * s.waterRelative),
      saltLPerM2H: e.saltLPerM2H * Math.exp(salt * s.saltRelative),
    })),
    restrictor: { ...unit.restrictor, scale: Math.exp(normal() * s.restrictorRelative) },
    ...(unit.blendFraction && { blendFraction: unit.blendFraction * Math.exp(normal() * s.blendRelative) }),
    ...(unit.permeatePump && {
      permeatePump: {
        ...unit.permeatePump,
        strokeRatio: unit.permeatePump.strokeRatio * Math.exp(normal() * s.strokeRatioRelative),
        inletKPa: Math.max(0, unit.permeatePump.inletKPa + normal() * s.pumpInletKPa),
      },
    }),
    shutOff: { ...unit.shutOff, ratio: unit.shutOff.ratio + normal() * s.shutOffRatio },
    tanks: unit.tanks.map((t) => ({
      ...t,
      airChargeKPaGauge: Math.max(0, t.airChargeKPaGauge + charge * s.airChargeKPa),
    })),
  };
  const conditions = {
    feedPressureKPaGauge: today.feedPressureKPaGauge.value + normal() * today.feedPressureKPaGauge.u,
    temperatureC: today.temperatureC.value + normal() * today.temperatureC.u,
    feedMgPerL: Math.max(1, today.feedMgPerL.value + normal() * today.feedMgPerL.u),
  };
  const open = operatingPoint(drawn, { ...conditions, tankPressureKPaGauge: 0 }, { segments: 6 });
  const filled = filling(drawn, conditions, { segments: 6 });
  if (open.kind !== "flowing") throw new Error(open.kind);
  const solids = (x: number) => x * (1 + normal() * s.solidsReadingRelative) + normal() * s.solidsStepMgPerL;
  const flow = (x: number) => x * (1 + normal() * s.flowReadingRelative);
  const rise = drawn.booster
    ? boosterRiseKPa(drawn.booster, conditions.feedPressureKPaGauge, open.feedLPerH)
    : 0;
  return {
    afterFilter: open.afterFilterKPaGauge - rise + normal() * s.gaugeKPa,
    drain: flow(open.concentrateLPerH),
    permeate: flow(open.permeateLPerH),
    permeateToWaste: solids(open.permeateMgPerL),
    ...(filled.kind === "known" && {
      tankFull: filled.value.shutOffKPaGauge + normal() * s.gaugeKPa,
      delivered: solids(filled.value.meanMgPerL),
    }),
  };
}
