import type { Hidden } from "../hidden.ts";
import type { Scene } from "../scene.ts";

/** One way a truth may differ from the record, in standard deviations of its own scatter. */
export interface Freedom {
  readonly apply: (hidden: Hidden, z: number) => Hidden;
}

const withUnit = (h: Hidden, part: Partial<Hidden["situation"]["unit"]>): Hidden => ({
  ...h,
  situation: { ...h.situation, unit: { ...h.situation.unit, ...part } },
});

/** The freedoms of a sound unit; the spreads are those of the population the network learnt from. */
export function freedoms(scene: Scene): readonly Freedom[] {
  const known =
    scene.baseline === "commissioned" ? { a: 0.05, b: 0.12, r: 0.05 } : { a: 0.13, b: 0.28, r: 0.09 };
  return [
    { apply: (h, z) => elements(h, Math.exp(known.a * z), 1) },
    { apply: (h, z) => elements(h, 1, Math.exp(known.b * z)) },
    {
      apply: (h, z) =>
        withUnit(h, {
          restrictor: {
            ...h.situation.unit.restrictor,
            scale: (h.situation.unit.restrictor.scale ?? 1) * Math.exp(known.r * z),
          },
        }),
    },
    {
      apply: (h, z) =>
        withUnit(h, {
          cartridges: h.situation.unit.cartridges.map((one) => ({
            ...one,
            clogging: (one.clogging ?? 1) * Math.exp(0.5 * z),
          })),
        }),
    },
    {
      apply: (h, z) =>
        withUnit(h, {
          outletCartridges: (h.situation.unit.outletCartridges ?? []).map((one) => ({
            ...one,
            clogging: (one.clogging ?? 1) * Math.exp(0.15 * z),
          })),
        }),
    },
    {
      apply: (h, z) =>
        withUnit(h, {
          tanks: h.situation.unit.tanks.map((tank) => ({
            ...tank,
            airChargeKPaGauge: Math.max(1, tank.airChargeKPaGauge + 7 * z),
          })),
        }),
    },
    {
      apply: (h, z) =>
        withUnit(h, {
          shutOff: { ...h.situation.unit.shutOff, ratio: h.situation.unit.shutOff.ratio + 0.02 * z },
        }),
    },
    { apply: (h, z) => pressures(h, Math.exp(0.06 * z), 1) },
    { apply: (h, z) => pressures(h, 1, Math.exp(0.035 * z)) },
    { apply: (h, z) => conditions(h, { temperatureC: h.situation.conditions.temperatureC + 3 * z }) },
    {
      apply: (h, z) => conditions(h, { feedMgPerL: h.situation.conditions.feedMgPerL * Math.exp(0.09 * z) }),
    },
    { apply: (h, z) => ({ ...h, chlorineMgPerL: h.chlorineMgPerL * Math.exp(0.25 * z) }) },
    { apply: (h, z) => ({ ...h, carbonPass: h.carbonPass * Math.exp(0.6 * z) }) },
    {
      apply: (h, z) => ({
        ...h,
        hardnessMgPerL: h.hardnessMgPerL * Math.exp((scene.softener ? 0.5 : 0.12) * z),
      }),
    },
    { apply: (h, z) => ({ ...h, firstDrawFactor: 1 + (h.firstDrawFactor - 1) * Math.exp(0.4 * z) }) },
    { apply: (h, z) => ({ ...h, dailyLitres: h.dailyLitres * Math.exp(0.4 * z) }) },
  ];
}

function elements(h: Hidden, water: number, salt: number): Hidden {
  return withUnit(h, {
    elements: h.situation.unit.elements.map((one) => ({
      ...one,
      waterLPerM2HBar: one.waterLPerM2HBar * water,
      saltLPerM2H: one.saltLPerM2H * salt,
    })),
  });
}

const conditions = (h: Hidden, part: Partial<Hidden["situation"]["conditions"]>): Hidden => ({
  ...h,
  situation: { ...h.situation, conditions: { ...h.situation.conditions, ...part } },
});

const pressures = (h: Hidden, feed: number, stat: number): Hidden => ({
  ...conditions(h, { feedPressureKPaGauge: h.situation.conditions.feedPressureKPaGauge * feed }),
  staticPressureKPaGauge: h.staticPressureKPaGauge * feed * stat,
});
