import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import {
  type ConservedWater,
  heatClosed,
  type Rejections,
  speciate,
  speciateConserved,
  type Water,
  type WaterAnalysis,
} from "@tapside/water";
import { type IonFlows, stepIons } from "./internal/ion-steps.ts";
import { operatingPoint } from "./operating-point.ts";
import type { ScaleMineral } from "./questions/highest-recovery.ts";
import type { Conditions, Unit } from "./unit.ts";
import { usualRejections } from "./usual-rejections.ts";

export interface IonPlace {
  /** Of the feed taken off up to here. */
  readonly recovery: number;
  readonly feedSide: Water;
}

export interface IonsAlong {
  readonly recovery: number;
  readonly permeate: Water;
  readonly concentrate: Water;
  /** From feed end to concentrate end. */
  readonly places: readonly IonPlace[];
  /** First mineral over its limit on the way, and from which recovery; "none" when the concentrate stays below. */
  readonly scale:
    | { readonly kind: "none"; readonly mineral: ScaleMineral; readonly index: number }
    | {
        readonly kind: "scales";
        readonly mineral: ScaleMineral;
        readonly fromRecovery: number;
        readonly index: number;
      }
    | { readonly kind: "feed-already-scales"; readonly mineral: ScaleMineral; readonly index: number };
}

export interface IonOptions {
  /** Saturation index allowed; 0 when not given. */
  readonly saturationIndex?: number;
  /** Of an element at its own test; each ion's B follows from the one of sodium chloride in their proportion. */
  readonly rejections?: Rejections;
}

const minerals: readonly ScaleMineral[] = ["calcite", "gypsum", "fluorite", "amorphousSilica"];

/**
 * Ions along the element: permeate and concentrate as waters with their pH, and where on the way which mineral passes its limit.
 *
 * Formula: for every ion Bᵢ = B·[(1 − Rᵢ)/Rᵢ]/[(1 − R_Cl)/R_Cl], Cp = Bᵢ·Cm/(J + Bᵢ), Cm − Cp = β(Cb − Cp), with the flux of `operatingPoint`; CO₂ is
 * the same on both sides, sodium closes the charge of what passes
 * Source: solution–diffusion; saturation and pH by `speciate` (P82); rejections: common practice.
 * Range: as `operatingPoint`; the feed is brought to the temperature closed to air.
 * Error: 0.1 in SI and 0.1 in pH besides the rejections' own; the wall is up to β more concentrated than said here.
 * @example
 * ```ts
 * import { ionsAlongElement, simpleUnit } from "@tapside/reverse-osmosis";
 * const unit = simpleUnit({ areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65, polarisation: 1.1 }, { ratedLPerH: 20, ratedKPa: 414 });
 * const at = { feedPressureKPaGauge: 414, temperatureC: 15, feedMgPerL: 400, tankPressureKPaGauge: 0 };
 * const hard = { temperatureC: 15, pH: 7.3, alkalinityMgPerLCaCO3: 250, ions: { Ca: 90, Mg: 15, Na: 20, Cl: 40, SO4: 45, SiO2: 10 } };
 * const along = ionsAlongElement(unit, at, hard);
 * along.kind === "known" ? along.value.scale.mineral : ""; // => "calcite"
 * along.kind === "known" && along.value.permeate.pH < along.value.concentrate.pH; // => true
 * ```
 */
export function ionsAlongElement(
  unit: Unit,
  conditions: Conditions,
  feed: WaterAnalysis,
  options: IonOptions = {},
): Outcome<IonsAlong> {
  const point = operatingPoint(unit, conditions);
  if (point.kind === "refused") return point;
  if (point.kind !== "flowing") return refused(point.kind);
  const water = mapOutcome(speciate(feed), (solved) => heatClosed(solved, conditions.temperatureC));
  return mapOutcome(water, (solved) => {
    const steps = stepIons(unit, conditions, point, solved, options.rejections ?? usualRejections);
    const permeate = speciateConserved(waterOf(solved, steps.permeate));
    if (permeate.kind !== "known") return permeate;
    const places: IonPlace[] = [];
    for (const one of steps.places) {
      const here = speciateConserved(waterOf(solved, one));
      if (here.kind !== "known") return here;
      places.push({ recovery: 1 - one.flow / steps.places[0]!.flow, feedSide: here.value });
    }
    const concentrate = places.at(-1)!;
    return known({
      recovery: concentrate.recovery,
      permeate: permeate.value,
      concentrate: concentrate.feedSide,
      places,
      scale: scaleOf(places, options.saturationIndex ?? 0),
    });
  });
}

/** Carbon besides CO₂ goes with the alkalinity. */
function waterOf(feed: Water, { flow, totals, alkalinity }: IonFlows): ConservedWater {
  const co2 = feed.molality.CO2;
  const perFeed = feed.alkalinityEqPerKg > 0 ? alkalinity / flow / feed.alkalinityEqPerKg : 0;
  const entries = Object.entries(totals).map(([id, amount]) => [id, amount / flow]);
  return {
    temperatureC: feed.temperatureC,
    totals: Object.fromEntries(entries) as ConservedWater["totals"],
    alkalinityEqPerKg: alkalinity / flow,
    carbonMolPerKg: co2 + (feed.carbonMolPerKg - co2) * perFeed,
  };
}

function worst(water: Water): { readonly mineral: ScaleMineral; readonly index: number } {
  const all = minerals.map((mineral) => ({ mineral, index: water.saturation[mineral] }));
  return all.reduce((a, b) => (b.index > a.index ? b : a));
}

function scaleOf(places: readonly IonPlace[], limit: number): IonsAlong["scale"] {
  const end = worst(places.at(-1)!.feedSide);
  const first = worst(places[0]!.feedSide);
  if (first.index > limit) return { kind: "feed-already-scales", ...first };
  for (let i = 1; i < places.length; i++) {
    const [before, here] = [places[i - 1]!, places[i]!];
    const { mineral, index } = worst(here.feedSide);
    if (!(index > limit)) continue;
    const share =
      (limit - before.feedSide.saturation[mineral]) / (index - before.feedSide.saturation[mineral]);
    const fromRecovery = before.recovery + share * (here.recovery - before.recovery);
    return { kind: "scales", mineral, fromRecovery, index: end.index };
  }
  return { kind: "none", ...end };
}
