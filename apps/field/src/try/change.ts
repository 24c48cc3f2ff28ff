import type { UnitAsRead } from "@tapside/assessment";
import { converted } from "@tapside/quantities";
import { type Tank, type Unit, usualBooster } from "@tapside/reverse-osmosis";

export type KnobId = "water" | "feed" | "charge" | "restrictor";
export type PartId = "tank" | "element" | "booster";

/** What is being tried: the four numbers, and parts put in. */
export interface Tried {
  readonly temperatureC: number;
  readonly feedPsi: number;
  readonly chargePsi: number;
  /** Times the restrictor as it is. */
  readonly restrictor: number;
  readonly parts: Readonly<Record<PartId, boolean>>;
}

const psi = (kPa: number) => converted(kPa, "kPa", "psi");
const kPa = (value: number) => converted(value, "psi", "kPa");

/** Steps a thumb makes. A restrictor is sold in sizes, so its steps are ratios. */
const KNOBS: Readonly<
  Record<
    KnobId,
    { readonly of: keyof Tried; readonly low: number; readonly high: number; readonly step: number }
  >
> = {
  water: { of: "temperatureC", low: 1, high: 35, step: 1 },
  feed: { of: "feedPsi", low: 10, high: 120, step: 2 },
  charge: { of: "chargePsi", low: 0, high: 50, step: 1 },
  restrictor: { of: "restrictor", low: 0.25, high: 4, step: 0 },
};
const SIZES = [0.25, 0.35, 0.5, 0.7, 0.85, 1, 1.2, 1.4, 2, 2.8, 4] as const;

export const KNOB_IDS = Object.keys(KNOBS) as readonly KnobId[];
export const PART_IDS: readonly PartId[] = ["tank", "element", "booster"];

/** The unit as it is, in the page's numbers. */
export function asItIs({ unit, conditions }: UnitAsRead): Tried {
  return {
    temperatureC: Math.round(conditions.temperatureC),
    feedPsi: Math.round(psi(conditions.feedPressureKPaGauge)),
    chargePsi: Math.round(psi(unit.tanks[0]?.airChargeKPaGauge ?? 0)),
    restrictor: 1,
    parts: { tank: false, element: false, booster: false },
  };
}

export function turned(tried: Tried, knob: KnobId, way: 1 | -1): Tried {
  const { of, low, high, step } = KNOBS[knob];
  const now = tried[of] as number;
  const next =
    step === 0 ? (SIZES[SIZES.indexOf(now as (typeof SIZES)[number]) + way] ?? now) : now + way * step;
  return { ...tried, [of]: Math.min(high, Math.max(low, next)) };
}

/** Numbers that were not touched keep the value as read, not the rounded one on the page. */
export function applied(base: UnitAsRead, tried: Tried, newElement: Unit["elements"]): UnitAsRead {
  const start = asItIs(base);
  const { unit, conditions } = base;
  // A unit that has its own booster is tried without it.
  const { booster: own, ...rest } = unit;
  const booster = tried.parts.booster ? (own ? undefined : usualBooster) : own;
  const charge = tried.chargePsi === start.chargePsi ? undefined : kPa(tried.chargePsi);
  const feedChange = tried.feedPsi - start.feedPsi;
  const tanks = unit.tanks.map(
    (tank): Tank => (charge === undefined ? tank : { ...tank, airChargeKPaGauge: charge }),
  );
  return {
    ...base,
    unit: {
      ...rest,
      ...(booster && { booster }),
      tanks: tried.parts.tank ? [...tanks, ...tanks] : tanks,
      elements: tried.parts.element ? newElement : unit.elements,
      restrictor: { ...unit.restrictor, scale: (unit.restrictor.scale ?? 1) * tried.restrictor },
    },
    conditions: {
      ...conditions,
      temperatureC: tried.temperatureC === start.temperatureC ? conditions.temperatureC : tried.temperatureC,
      feedPressureKPaGauge: Math.max(0, conditions.feedPressureKPaGauge + kPa(feedChange)),
    },
    ...(base.staticFeedKPaGauge !== undefined && {
      staticFeedKPaGauge: Math.max(0, base.staticFeedKPaGauge + kPa(feedChange)),
    }),
  };
}
