import { allKnown, known, mapOutcome, missing, type Outcome } from "@tapside/quantities";
import type { SlotId } from "@tapside/records";
import { blend, type ConservedWater, speciate, type WaterAnalysis } from "@tapside/water";
import { feedWaterReadings } from "./feed-water.ts";
import { amountOf } from "./internal/amounts.ts";
import { remember } from "./internal/remember.ts";
import type { Scene } from "./internal/scene.ts";
import { productWater, USUAL_PASSAGE } from "./product-water.ts";
import { waterSamples } from "./water-judged.ts";

/** Waters the appliances may get, equally likely; `through` says how they came about. */
export interface DeliveredWaters {
  readonly waters: readonly ConservedWater[];
  readonly through: "membrane" | "bypass" | "remineraliser";
}

const SAMPLES = 40;

/** How far one ion's passage strays from that of the dissolved solids, and the divalent ones' from theirs. Common practice, no source. */
const SINGLE = [0.7, 1.3] as const;
const DIVALENT = [0.15, 0.8] as const;

interface Way {
  readonly passage: number;
  readonly feedFraction: number;
}

const solvedSamples = remember(
  (readings: ReturnType<typeof feedWaterReadings>): Outcome<readonly ConservedWater[]> =>
    mapOutcome(waterSamples(readings, SAMPLES), (samples) => known(samples.flatMap(solvedOrNone))),
  50,
);

interface Made {
  readonly readings: ReturnType<typeof feedWaterReadings>;
  readonly way: Way;
}

/** The same list of waters for the same readings, so that what is worked out of it is worked out once. */
const madeSamples = remember(
  ({ readings, way }: Made): Outcome<readonly ConservedWater[]> =>
    mapOutcome(solvedSamples(readings), (feeds) => {
      const made = feeds.map((feed, i) => madeOf(feed, way, (i + 0.5) / feeds.length, i));
      return known(made.flatMap((one) => (one.kind === "known" ? [one.value] : [])));
    }),
  50,
);

function solvedOrNone(sample: WaterAnalysis): ConservedWater[] {
  const solved = speciate(sample);
  return solved.kind === "known" ? [solved.value] : [];
}

/**
 * Waters the appliances of a unit may get by what was read: the feed as its readings leave it open, less what the membrane
 * holds back by the dissolved solids read before and after it, or mixed with feed where a valve blends. A bypassed unit
 * delivers its feed. What a remineraliser adds is not told here.
 */
export function deliveredWaters(scene: Scene): Outcome<DeliveredWaters> {
  const readings = feedWaterReadings(scene.visit, scene.file);
  if (scene.visit.answers.inUse === "bypassed")
    return mapOutcome(solvedSamples(readings), (waters) => known({ waters, through: "bypass" as const }));
  const { remineraliser } = scene.file.unit;
  const through = remineraliser ? ("remineraliser" as const) : ("membrane" as const);
  return mapOutcome(remineraliser ? ahead(scene) : wayOf(scene), (way) =>
    mapOutcome(madeSamples({ readings, way }), (waters) => known({ waters, through })),
  );
}

/** One water after the membrane, its passages drawn over what is usual without chance: `at` and a golden step of `index`. */
function madeOf(feed: ConservedWater, { passage, feedFraction }: Way, at: number, index: number) {
  const other = (index * 0.618034) % 1;
  const single = passage * (SINGLE[0] + at * (SINGLE[1] - SINGLE[0]));
  const product = productWater(feed, single, DIVALENT[0] + other * (DIVALENT[1] - DIVALENT[0]));
  if (product.kind !== "known" || feedFraction <= 0) return product;
  return blend(feed, product.value, feedFraction);
}

function shareOf(slot: SlotId, { readings, file }: Scene): Outcome<number> {
  const read = allKnown({
    feed: amountOf("feedTds", readings, file),
    product: amountOf(slot, readings, file),
  });
  return mapOutcome(read, ({ feed, product }) =>
    feed.value > 0 && product.value >= 0
      ? known(Math.min(1, product.value / feed.value))
      : missing(feed.value > 0 ? slot : "feedTds"),
  );
}

/** The water ahead of a remineraliser: only what it does not add can be told by it. */
const ahead = (scene: Scene): Outcome<Way> =>
  mapOutcome(shareOf("permeateTds", scene), (passage) => known({ passage, feedFraction: 0 }));

/** More solids than a sound membrane lets through, or a blend valve, are feed past it. */
function wayOf(scene: Scene): Outcome<Way> {
  return mapOutcome(shareOf("deliveredTds", scene), (share) => {
    if (share <= 0.5 && !scene.file.unit.blendValve) return known({ passage: share, feedFraction: 0 });
    const membrane = shareOf("permeateTds", scene);
    const passage = Math.min(membrane.kind === "known" ? membrane.value : USUAL_PASSAGE, share, 0.5);
    return known({ passage, feedFraction: (share - passage) / (1 - passage) });
  });
}
