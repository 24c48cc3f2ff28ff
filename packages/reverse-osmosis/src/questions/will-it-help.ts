import { known, mapOutcome, type Outcome } from "@tapside/quantities";
import { type Interval, type Scatter, type Today, usualScatter } from "../expected-readings.ts";
import { filling } from "../filling.ts";
import { type Draw, middleDraw, variedUnit } from "../internal/varied-unit.ts";
import { standingPressureKPaGauge } from "../standing-pressure.ts";
import { usableLitres } from "../tank.ts";
import type { Unit } from "../unit.ts";

/** What an owner feels of a change. */
export type Felt = "usableL" | "hoursToFill" | "deliveredMgPerL";

export interface Gain {
  readonly now: Interval;
  readonly changed: Interval;
  /** Changed less now, with what both share taken out. */
  readonly gain: Interval;
  readonly verdict: "more" | "less" | "cannotTell";
}

export type Help = Readonly<Record<Felt, Outcome<Gain>>>;

export interface HelpQuestion {
  readonly today: Today;
  /** Lowest pressure the appliance works at; 0 counts every litre. */
  readonly minimumKPaGauge: number;
  readonly scatter?: Scatter;
  /** Another element goes in: its permeabilities scatter on their own, as its label does. */
  readonly newElement?: boolean;
  readonly segments?: number;
}

const FELT: readonly Felt[] = ["usableL", "hoursToFill", "deliveredMgPerL"];
type Values = Readonly<Record<Felt, number>>;
type Own = "water" | "salt";
const OWN: readonly Own[] = ["water", "salt"];
/** What a permeate pump alone is off by. */
const OF_PUMP: readonly (keyof Draw)[] = ["stroke", "inlet"];
const SHARED = (Object.keys(middleDraw) as (keyof Draw)[]).filter((name) => !OWN.includes(name as Own));

/**
 * Will a booster, a second tank, a new element or another charge help, and by how much: litres above the appliance's minimum, hours to
 * fill, dissolved solids delivered, each now and then with an interval that holds 19 in 20.
 *
 * Formula: `filling` of both units; scatter to first order, the same draw for both, so that what they share falls out of the gain
 * Source: model of `filling`; scatter `usualScatter` (invented, editable).
 * Range: pressurised tanks that fill; what cannot be answered is named for each figure.
 * Error: as good as the scatter assumed. "cannotTell" when the interval of the gain holds nought.
 * @example
 * ```ts
 * import { simpleUnit, willItHelp } from "@tapside/reverse-osmosis";
 * const tank = { volumeL: 30, airChargeKPaGauge: 124 };
 * const unit = simpleUnit({ areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65 }, { ratedLPerH: 45, ratedKPa: 414 }, tank);
 * const exact = (value: number) => ({ value, u: 0 });
 * const today = { feedPressureKPaGauge: exact(420), temperatureC: exact(12), feedMgPerL: exact(300) };
 * const help = willItHelp(unit, { ...unit, tanks: [tank, tank] }, { today, minimumKPaGauge: 138 });
 * help.usableL.kind === "known" ? help.usableL.value.changed.value / help.usableL.value.now.value : 0; // => 2
 * ```
 */
export function willItHelp(now: Unit, then: Unit, question: HelpQuestion): Help {
  const centre = both(now, then, question, middleDraw, middleDraw);
  const answers = FELT.map(
    (felt) => [felt, mapOutcome(centre, (pair) => known(gainOf(felt, pair, now, then, question)))] as const,
  );
  return Object.fromEntries(answers) as unknown as Help;
}

interface Pair {
  readonly now: Values;
  readonly changed: Values;
}

function both(now: Unit, then: Unit, question: HelpQuestion, one: Draw, other: Draw): Outcome<Pair> {
  return mapOutcome(feltOf(now, question, one), (a) =>
    mapOutcome(feltOf(then, question, other), (b) => known({ now: a, changed: b })),
  );
}

function feltOf(unit: Unit, question: HelpQuestion, draw: Draw): Outcome<Values> {
  const { today, minimumKPaGauge, scatter = usualScatter, segments = 8 } = question;
  const varied = variedUnit(unit, scatter, draw);
  const { feedPressureKPaGauge: p, temperatureC: t, feedMgPerL: c, staticFeedKPaGauge } = today;
  const conditions = {
    feedPressureKPaGauge: p.value + draw.pressure * p.u,
    temperatureC: t.value + draw.temperature * t.u,
    feedMgPerL: c.value * Math.exp((draw.solids * c.u) / c.value),
  };
  const filled = filling(varied, conditions, {
    segments,
    ...(staticFeedKPaGauge !== undefined && {
      staticFeedKPaGauge: standingPressureKPaGauge(varied, conditions, staticFeedKPaGauge),
    }),
  });
  return mapOutcome(filled, ({ hours, meanMgPerL, shutOffKPaGauge }) => {
    const swing = { fullKPaGauge: shutOffKPaGauge, minimumKPaGauge };
    const litres = varied.tanks.map((tank) => usableLitres(tank, swing, varied.atmosphericKPa));
    return known({
      usableL: litres.reduce((a, b) => a + b, 0),
      hoursToFill: hours,
      deliveredMgPerL: meanMgPerL,
    });
  });
}

/** Draws of both units together: shared ones move both, an element's own move one where a new element goes in. */
function drawPairs(
  question: HelpQuestion,
  pumped: boolean,
): readonly ((n: number) => readonly [Draw, Draw])[] {
  const moved = (name: keyof Draw, n: number): Draw => ({ ...middleDraw, [name]: n });
  const theirs = pumped ? SHARED : SHARED.filter((name) => !OF_PUMP.includes(name));
  const shared = [...theirs, ...(question.newElement ? [] : OWN)];
  const alone = question.newElement ? OWN : [];
  return [
    ...shared.map((name) => (n: number) => [moved(name, n), moved(name, n)] as const),
    ...alone.map((name) => (n: number) => [moved(name, n), middleDraw] as const),
    ...alone.map((name) => (n: number) => [middleDraw, moved(name, n)] as const),
  ];
}

function gainOf(felt: Felt, centre: Pair, now: Unit, then: Unit, question: HelpQuestion): Gain {
  const variance = { now: 0, changed: 0, gain: 0 };
  for (const pairOf of drawPairs(
    question,
    now.permeatePump !== undefined || then.permeatePump !== undefined,
  )) {
    const [up, down] = [1, -1].map((n) => both(now, then, question, ...pairOf(n)));
    if (up?.kind !== "known" || down?.kind !== "known") continue;
    const dNow = (up.value.now[felt] - down.value.now[felt]) / 2;
    const dThen = (up.value.changed[felt] - down.value.changed[felt]) / 2;
    variance.now += dNow ** 2;
    variance.changed += dThen ** 2;
    variance.gain += (dThen - dNow) ** 2;
  }
  const around = (value: number, v: number, floor: number): Interval => {
    const spread = 1.96 * Math.sqrt(v);
    return { value, low: Math.max(floor, value - spread), high: value + spread };
  };
  const gain = around(centre.changed[felt] - centre.now[felt], variance.gain, Number.NEGATIVE_INFINITY);
  const verdict = gain.low > 0 ? "more" : gain.high < 0 ? "less" : "cannotTell";
  return {
    now: around(centre.now[felt], variance.now, 0),
    changed: around(centre.changed[felt], variance.changed, 0),
    gain,
    verdict,
  };
}
