import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import {
  type ConservedWater,
  type Rejections,
  type SaturationIndices,
  speciate,
  speciateConserved,
  splitStream,
  type WaterAnalysis,
} from "@tapside/water";
import { usualRejections } from "../usual-rejections.ts";

/** What a concentrate lays down first. Silica is judged as amorphous silica. */
export type ScaleMineral = "calcite" | "gypsum" | "fluorite" | "amorphousSilica";
const MINERALS: readonly ScaleMineral[] = ["calcite", "gypsum", "fluorite", "amorphousSilica"];

export interface HighestRecovery {
  readonly recovery: number;
  /** The mineral that sets it; none when even `most` lays nothing down. */
  readonly mineral?: ScaleMineral;
}

export interface ScalingLimits {
  /** Saturation index allowed in the concentrate; 0 when not given: nothing can settle. */
  readonly saturationIndex?: number;
  readonly rejections?: Rejections;
}

const most = 0.75;

/**
 * Highest recovery at which the concentrate of this feed lays down no scale at its temperature, and which mineral sets it.
 *
 * Formula: largest Y with SI(concentrate of `splitStream`) ≤ limit for calcite, gypsum, fluorite and amorphous silica; bisection
 * Source: saturation by `speciate` (P82 constants); rejections: common practice.
 * Range: recovery to 0.75; a feed that is over the limit by itself is refused with its mineral and index.
 * Error: 0.1 in SI, about 5 points of recovery; scale needs time, and many units run above it for years (common practice).
 * @example
 * ```ts
 * import { highestRecovery } from "@tapside/reverse-osmosis";
 * const soft = { temperatureC: 10, pH: 7.2, alkalinityMgPerLCaCO3: 30, ions: { Ca: 12, Mg: 2, Na: 10, Cl: 12, SO4: 10, SiO2: 5 } };
 * const answer = highestRecovery(soft);
 * answer.kind === "known" ? answer.value.recovery : 0; // => 0.75
 * ```
 */
export function highestRecovery(feed: WaterAnalysis, limits: ScalingLimits = {}): Outcome<HighestRecovery> {
  const { saturationIndex = 0, rejections = usualRejections } = limits;
  return mapOutcome(speciate(feed), (water) => {
    const own = worst(water.saturation);
    if (own.index > saturationIndex)
      return refused("feed-already-scales", { mineral: own.mineral, index: own.index });
    const at = (recovery: number) => concentrateWorst(water, rejections, recovery);
    const end = at(most);
    if (end.kind !== "known") return end;
    if (end.value.index <= saturationIndex) return known({ recovery: most });
    let [low, high, mineral] = [0, most, end.value.mineral];
    for (let n = 0; n < 24; n++) {
      const middle = (low + high) / 2;
      const one = at(middle);
      if (one.kind !== "known") return one;
      if (one.value.index <= saturationIndex) low = middle;
      else {
        high = middle;
        mineral = one.value.mineral;
      }
    }
    return known({ recovery: low, mineral });
  });
}

interface Worst {
  readonly mineral: ScaleMineral;
  readonly index: number;
}

function worst(saturation: SaturationIndices): Worst {
  const all = MINERALS.map((mineral) => ({ mineral, index: saturation[mineral] })).filter((one) =>
    Number.isFinite(one.index),
  );
  return all.reduce((a, b) => (b.index > a.index ? b : a), { mineral: "calcite", index: -99 } as Worst);
}

function concentrateWorst(feed: ConservedWater, rejections: Rejections, recovery: number): Outcome<Worst> {
  if (!(recovery > 0)) return mapOutcome(speciateConserved(feed), (water) => known(worst(water.saturation)));
  return mapOutcome(splitStream(feed, rejections, recovery), ({ concentrate }) =>
    mapOutcome(speciateConserved(concentrate), (water) => known(worst(water.saturation))),
  );
}
