import { allKnown, converted, known, mapOutcome, type Outcome, type Uncertain } from "@tapside/quantities";
import type { Booster } from "@tapside/reverse-osmosis";
import type { Figure, Finding } from "./assessment.ts";
import { pressureUnitOf } from "./figures.ts";
import { boosterOf, membranePressure } from "./from-records.ts";
import { amountOf } from "./internal/amounts.ts";
import { decimalsRead } from "./internal/decimals-read.ts";
import type { Scene } from "./internal/scene.ts";
import { judge } from "./judge.ts";
import { rulesOf } from "./limits.ts";

const CONSEQUENCE = 30;

/** The pressure the element has to work with: the feed as it comes, or with a booster what the pump makes of it that day. */
export function supplyFindings(scene: Scene): readonly Finding[] {
  const { file, phase, context } = scene;
  const booster = boosterOf(file.unit);
  if (!booster)
    return [judge("feedPressure", phase, feedFigure(scene), rulesOf(context).feedPressure, CONSEQUENCE)];
  const switched = switchFindings(scene, booster);
  return switched.some(readBelow) ? switched : [...switched, boosted(scene)];
}

/** By what was read the pump stands, be it too close to say. */
const readBelow = ({ figure, limit }: Finding): boolean =>
  figure !== undefined && limit?.low !== undefined && figure.value < limit.low;

function shown({ context }: Scene, pressure: Outcome<Uncertain>): Outcome<Figure> {
  const unit = pressureUnitOf(context);
  return mapOutcome(pressure, ({ value, u }) =>
    known<Figure>({ value: converted(value, "kPa", unit), u: converted(u, "kPa", unit), unit }),
  );
}

function feedFigure(scene: Scene): Outcome<Figure> {
  const { readings, file, context } = scene;
  return mapOutcome(shown(scene, amountOf("beforeFilterPressure", readings, file)), (figure) =>
    known({ ...figure, ...decimalsRead(readings.beforeFilterPressure, pressureUnitOf(context)) }),
  );
}

/** A feed below what the pump's own switch waits for leaves it standing; told only where it is so or too close to say. */
function switchFindings(scene: Scene, { offBelowKPaGauge }: Booster): Finding[] {
  const feed = feedFigure(scene);
  if (offBelowKPaGauge === undefined || feed.kind !== "known") return [];
  const unit = pressureUnitOf(scene.context);
  const limit = { low: converted(offBelowKPaGauge, "kPa", unit), unit, source: "boosterSwitch" };
  const found = judge("feedPressure", scene.phase, feed, limit, 2 * CONSEQUENCE);
  if (found.verdict === "within") return [];
  return [{ ...found, detail: { pattern: found.verdict === "outside" ? "boosterOff" : "boosterMaybeOff" } }];
}

/** Behind the pump at the flow that was measured, in the band a feed without a pump is asked to keep. */
function boosted(scene: Scene): Finding {
  const { readings, file, phase, context } = scene;
  const flowing = allKnown({
    feed: amountOf("beforeFilterPressure", readings, file),
    permeate: amountOf("permeateFlow", readings, file),
    drain: amountOf("drainFlow", readings, file),
  });
  const behind = mapOutcome(flowing, () => membranePressure(readings, file));
  const limit = rulesOf(context).feedPressure;
  const found = judge("boostedPressure", phase, shown(scene, behind), limit, CONSEQUENCE);
  if (flowing.kind !== "known") return found;
  const feed = converted(flowing.value.feed.value, "kPa", limit.unit);
  return { ...found, detail: { feed, unit: limit.unit, feedIs: feed < limit.low ? "below" : "notBelow" } };
}
