import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import { bestCharge, type Unit, usualBooster } from "@tapside/reverse-osmosis";
import { type KeepsUp, type KeepsUpOptions, keepsUp } from "./keeps-up.ts";
import { type Situation, tankTable } from "./tank-table.ts";
import type { Use } from "./use.ts";

/** What can be done about a unit that does not keep up, the least work first. */
export type RemedyId =
  | "asItIs"
  | "airCharge"
  | "secondTank"
  | "booster"
  | "twiceTheElement"
  | "elementAndTank";
export const REMEDY_IDS: readonly RemedyId[] = [
  "asItIs",
  "airCharge",
  "secondTank",
  "booster",
  "twiceTheElement",
  "elementAndTank",
];

export interface Remedy {
  readonly id: RemedyId;
  /** Air charge the answer stands on, kPa gauge; absent without a pressurised tank. */
  readonly chargeKPaGauge?: number;
  readonly answer: Outcome<KeepsUp>;
}

/** The unit with the air charge that gives most above the appliances' minimum; as it is where none helps. */
export function bestCharged(unit: Unit, situation: Situation): Unit {
  if (unit.storage === "vented") return unit;
  const feedKPaGauge = situation.staticFeedKPaGauge ?? situation.conditions.feedPressureKPaGauge;
  const rise = unit.booster?.shutOffRiseKPa ?? 0;
  const tanks = unit.tanks.map((tank) => {
    const best = bestCharge({
      tank,
      feedKPaGauge: feedKPaGauge + rise,
      minimumKPaGauge: situation.minimumKPaGauge,
      atmosphericKPa: unit.atmosphericKPa,
      shutOffRatio: { value: unit.shutOff.ratio, u: 0 },
    });
    return best.kind === "known" ? { ...tank, airChargeKPaGauge: best.value.chargeKPaGauge } : tank;
  });
  return { ...unit, tanks };
}

/** Twice the element and, so that recovery stays, twice the drain. */
const doubled = (unit: Unit): Unit => ({
  ...unit,
  elements: unit.elements.map((element) => ({ ...element, areaM2: 2 * element.areaM2 })),
  restrictor: { ...unit.restrictor, scale: 2 * (unit.restrictor.scale ?? 1) },
});

const twoTanks = (unit: Unit): Unit => ({ ...unit, tanks: [...unit.tanks, ...unit.tanks] });

/** The unit with one thing done to it; undefined where that cannot be. */
function changed(id: RemedyId, unit: Unit, situation: Situation): Unit | undefined {
  const charged = (one: Unit) => bestCharged(one, situation);
  switch (id) {
    case "asItIs":
      return unit;
    case "airCharge":
      return unit.storage === "vented" ? undefined : charged(unit);
    case "secondTank":
      return unit.tanks.length === 1 ? charged(twoTanks(unit)) : undefined;
    case "booster":
      return unit.booster ? undefined : charged({ ...unit, booster: usualBooster });
    case "twiceTheElement":
      return charged(doubled(unit));
    case "elementAndTank":
      return charged(doubled(unit.tanks.length === 1 ? twoTanks(unit) : unit));
  }
}

export interface Kitchen {
  readonly unit: Unit;
  readonly situation: Situation;
  readonly uses: readonly Use[];
}

/**
 * What would let a unit keep up with its kitchen: each remedy on the same kitchens and days, the tank's air always set to
 * what serves the appliances best.
 *
 * Formula: `keepsUp` of the changed unit
 * Source: model of `tankTable`; booster and element assumed (common practice, no source).
 * Range: a unit that fills and shuts off; what prevents it is named remedy by remedy.
 * Error: as `keepsUp`.
 */
export const remedies = (kitchen: Kitchen, options: KeepsUpOptions = {}): readonly Remedy[] =>
  REMEDY_IDS.flatMap((id) => remedy(id, kitchen, options) ?? []);

/** One of them; undefined where it cannot be done to this unit. */
export function remedy(
  id: RemedyId,
  { unit, situation, uses }: Kitchen,
  options: KeepsUpOptions = {},
): Remedy | undefined {
  const then = changed(id, unit, situation);
  if (!then) return undefined;
  const answer = mapOutcome(tankTable(then, situation), (table) => keepsUp(table, uses, options));
  const charge = then.storage === "vented" ? undefined : then.tanks[0]?.airChargeKPaGauge;
  return { id, answer, ...(charge !== undefined && { chargeKPaGauge: charge }) };
}

/** The least work that makes a unit keep up; undefined where nothing tried does. */
export const leastRemedy = (tried: readonly Remedy[]): Remedy | undefined =>
  tried.find(({ answer }) => answer.kind === "known" && answer.value.verdict === "keepsUp");

const LARGEST_TANK_L = 1000;

/**
 * The smallest tank, at its best air charge, with which a unit keeps up, L: for a survey before anything hangs there.
 *
 * Formula: bisection on one tank's volume, the same kitchens and days throughout, to 2 %
 * Source: as `remedies`.
 * Range: tanks of 2 to 1000 L. Refused: "makes-too-little" where no tank helps, because a day's use is more than a day makes.
 * Error: the litres are for the told use with its doubt: they hold for 95 of 100 such kitchens.
 */
export function leastTankL(
  { unit, situation, uses }: Kitchen,
  options: KeepsUpOptions = {},
): Outcome<number> {
  const enough = (volumeL: number): Outcome<boolean> => {
    const [tank = { volumeL, airChargeKPaGauge: 0 }] = unit.tanks;
    const one = bestCharged({ ...unit, tanks: [{ ...tank, volumeL }] }, situation);
    return mapOutcome(tankTable(one, situation), (table) =>
      mapOutcome(keepsUp(table, uses, options), ({ verdict }) => known(verdict === "keepsUp")),
    );
  };
  return mapOutcome(enough(LARGEST_TANK_L), (largest) => {
    if (!largest) return refused("makes-too-little");
    let [low, high] = [2, LARGEST_TANK_L];
    while (high / low > 1.02) {
      const middle = Math.sqrt(low * high);
      const answer = enough(middle);
      if (answer.kind !== "known") return answer;
      if (answer.value) high = middle;
      else low = middle;
    }
    return known(high);
  });
}
