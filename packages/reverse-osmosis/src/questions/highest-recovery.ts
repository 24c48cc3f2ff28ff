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
  /** The same for calcite alone, where a scale inhibitor holds it back. */
  readonly calciteIndex?: number;
  readonly rejections?: Rejections;
}

const most = 0.75;

/**
 * Highest recovery at which the concentrate of this feed lays down no scale at its temperature, and which mineral sets it.
 *
 * Formula: largest Y with SI(concentrate of `splitStream`) ≤ its limit for calcite, gypsum, fluorite and amorphous silica; bisection
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
  const { rejections = usualRejections } = limits;
  return mapOutcome(speciate(feed), (water) => {
    const own = worst(water.saturation, limits);
    if (own.over > 0) return refused("feed-already-scales", { mineral: own.mineral, index: own.index });
    const at = (recovery: number) => concentrateWorst(water, { ...limits, rejections }, recovery);
    const end = at(most);
    if (end.kind !== "known") return end;
    if (end.value.over <= 0) return known({ recovery: most });
    let [low, high, mineral] = [0, most, end.value.mineral];
    for (let n = 0; n < 24; n++) {
      const middle = (low + high) / 2;
      const one = at(middle);
      if (one.kind !== "known") return one;
      if (one.value.over <= 0) low = middle;
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
  /** How far above its limit. */
  readonly over: number;
}

function worst(saturation: SaturationIndices, { saturationIndex = 0, calciteIndex }: ScalingLimits): Worst {
  const allowed = (mineral: ScaleMineral) =>
    mineral === "calcite" ? (calciteIndex ?? saturationIndex) : saturationIndex;
  const all = MINERALS.map((mineral): Worst => {
    const index = saturation[mineral];
    return { mineral, index, over: index - allowed(mineral) };
  }).filter((one) => Number.isFinite(one.index));
  return all.reduce((a, b) => (b.over > a.over ? b : a), { mineral: "calcite", index: -99, over: -99 });
}

function concentrateWorst(
  feed: ConservedWater,
  limits: ScalingLimits & { readonly rejections: Rejections },
  recovery: number,
): Outcome<Worst> {
  const worstOf = (water: ConservedWater) =>
    mapOutcome(speciateConserved(water), ({ saturation }) => known(worst(saturation, limits)));
  if (!(recovery > 0)) return worstOf(feed);
  return mapOutcome(splitStream(feed, limits.rejections, recovery), ({ concentrate }) =>
    worstOf(concentrate),
  );
}
