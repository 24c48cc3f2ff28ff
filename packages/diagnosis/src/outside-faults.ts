import { CAUSE_IDS, CAUSES } from "./causes.ts";
import { donorBank } from "./donors.ts";
import { allReadings, type ScorePlan } from "./drawn-case.ts";
import type { Engine } from "./engine.ts";
import { checkFit } from "./misfit.ts";
import { ALTERED, AS_MODELLED } from "./population.ts";
import { posterior } from "./posterior.ts";
import { between, drawIndex, type Random, seededRandom } from "./random.ts";
import { shareOf } from "./share-of.ts";
import type { Readings } from "./signs.ts";
import { type SimulatedCase, simulateCase } from "./simulate-case.ts";

const scaled = (
  readings: Readings,
  signs: readonly (keyof Readings)[],
  factor: (value: number) => number,
): Readings => ({
  ...readings,
  ...Object.fromEntries(
    signs.flatMap((sign) => (readings[sign] === undefined ? [] : [[sign, factor(readings[sign])]])),
  ),
});

/** Faults that are in no catalogue of ours, as what they do to the readings of a sound unit. */
const OUTSIDE_FAULTS: Readonly<
  Record<string, (readings: Readings, one: SimulatedCase, random: Random) => Readings>
> = {
  /** Gas in the line: pressure gauges are right, every flow is foam and comes far too low at the tap and the drain alike. */
  gasInTheLine: (readings, _, random) => {
    const share = between(random, 0.35, 0.65);
    return scaled(
      readings,
      ["permeateFlow", "drainFlow", "outletFlow", "throttledFlow", "drainLineOffFlow"],
      (v) => v * share,
    );
  },
  /** One gauge before the filter, another behind it, each wrong in its own direction: pressure seems to rise along the line. */
  twoGaugesOff: (readings, _, random) => {
    const low = between(random, 0.55, 0.75);
    const high = between(random, 1.3, 1.6);
    const before = scaled(readings, ["staticPressure", "beforeFilterPressure"], (v) => v * low);
    return scaled(before, ["afterFilterPressure", "elementPressure", "tankFullPressure"], (v) => v * high);
  },
  /** Tubing exchanged at the blend valve: closing the blend gives feed water, opening it gives permeate. */
  tubingAtBlendValve: (readings, one) => ({
    ...readings,
    deliveredTds: readings.permeateTds ?? one.readings.permeateTds,
    firstDrawTds: readings.permeateTds ?? one.readings.permeateTds,
    flushedTds: readings.permeateTds ?? one.readings.permeateTds,
    isolatedTds: readings.feedTds ?? one.readings.feedTds,
  }),
};

/** How often readings of faults outside the catalogue are called unexplained, and how often those of known causes are. */
export function scoreOutside(engine: Engine, plan: ScorePlan) {
  const random = seededRandom(plan.seed + 3);
  const altered = plan.altered ? ALTERED : AS_MODELLED;
  const check = (one: SimulatedCase, readings: Readings) =>
    checkFit(one.scene, posterior(engine, donorBank(one.scene).expected, readings), readings).unexplained;
  const named = Object.entries(OUTSIDE_FAULTS).map(([name, distort]) => {
    let called = 0;
    for (let n = 0; n < plan.cases; n++) {
      const one = simulateCase(["healthy"], random, altered);
      called += Number(check(one, distort(allReadings(one), one, random)));
    }
    return [name, shareOf(called, plan.cases)] as const;
  });
  let falseAlarms = 0;
  const weights = CAUSE_IDS.map((id) => CAUSES[id].weight);
  for (let n = 0; n < 2 * plan.cases; n++) {
    const one = simulateCase([CAUSE_IDS[drawIndex(random, weights)]!], random, altered);
    falseAlarms += Number(check(one, allReadings(one)));
  }
  return { unexplained: Object.fromEntries(named), falseAlarms: shareOf(falseAlarms, 2 * plan.cases) };
}
