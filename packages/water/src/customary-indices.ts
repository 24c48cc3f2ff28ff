import { known, mapOutcome, type Outcome } from "@tapside/quantities";
import { CACO3_MG_PER_MEQ, CONSTITUENTS, type WaterAnalysis } from "./analysis.ts";
import {
  aggressiveIndex,
  langelierIndex,
  larsonSkoldIndex,
  puckoriusIndex,
  ryznarIndex,
} from "./corrosion-indices.ts";
import { hardnessFromIons } from "./hardness.ts";
import { simplifiedSaturationPh } from "./langelier.ts";
import { calciteSaturationAt } from "./saturation-at.ts";

/** Indices by the name they are asked for; "langelier" is the thermodynamic one, the saturation index of calcite. */
export const CUSTOMARY_INDICES = [
  "langelier",
  "langelierSimplified",
  "ryznar",
  "puckorius",
  "larsonSkold",
  "aggressive",
] as const;
export type CustomaryIndexId = (typeof CUSTOMARY_INDICES)[number];

const BICARBONATE_MG_PER_MEQ = 61.017;
/** Share of bicarbonate that stays as carbonate when a sample is dried. */
const LEFT_WHEN_DRIED = 0.4917;

const driedMgPerL = ({ ions, alkalinityMgPerLCaCO3 }: WaterAnalysis) =>
  CONSTITUENTS.reduce((sum, id) => sum + (ions[id] ?? 0), 0) +
  (alkalinityMgPerLCaCO3 / CACO3_MG_PER_MEQ) * BICARBONATE_MG_PER_MEQ * LEFT_WHEN_DRIED;

/**
 * The indices people ask for by name, at the water's own temperature and pH. Ryznar and Puckorius stand on the simplified
 * saturation pH with the formula for the temperature term; dissolved solids are the sum of what is given.
 *
 * Source: as `simplifiedSaturationPh`, `ryznarIndex`, `puckoriusIndex`, `larsonSkoldIndex`, `aggressiveIndex`.
 * Range: theirs. Error: about 0.1 between variants of the simplified form; none tells corrosion of a given metal.
 *
 * @example
 * ```ts
 * import { customaryIndices } from "@tapside/water";
 * const water = { temperatureC: 12, pH: 8, alkalinityMgPerLCaCO3: 150, ions: { Ca: 40.04 } };
 * customaryIndices(water).aggressive; // => { kind: "known", value: 12.18 }
 * ```
 */
export function customaryIndices(water: WaterAnalysis): Readonly<Record<CustomaryIndexId, Outcome<number>>> {
  const { temperatureC, pH, alkalinityMgPerLCaCO3: alkalinity, ions } = water;
  const calciumHardness = hardnessFromIons(ions.Ca ?? 0, 0);
  const saturationPh = simplifiedSaturationPh(
    {
      temperatureC,
      tdsMgPerL: driedMgPerL(water),
      calciumHardnessMgPerLCaCO3: calciumHardness,
      alkalinityMgPerLCaCO3: alkalinity,
    },
    "formula",
  );
  return {
    langelier: calciteSaturationAt(water, temperatureC),
    langelierSimplified: mapOutcome(saturationPh, (at) => known(langelierIndex(pH, at))),
    ryznar: mapOutcome(saturationPh, (at) => known(ryznarIndex(pH, at))),
    puckorius: mapOutcome(saturationPh, (at) => puckoriusIndex(at, alkalinity)),
    larsonSkold: larsonSkoldIndex(ions.Cl ?? 0, ions.SO4 ?? 0, alkalinity),
    aggressive: aggressiveIndex(pH, alkalinity, calciumHardness),
  };
}
