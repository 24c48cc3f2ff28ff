import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import { CACO3_G_PER_MOL, type ConservedWater } from "./analysis.ts";
import { precipitationPotential } from "./precipitation.ts";

/** A water after a bed of calcite: what it keeps, and what it took up. */
export interface Remineralised {
  readonly water: ConservedWater;
  readonly dissolvedMgPerLCaCO3: number;
}

/**
 * A calcite contactor: water takes up CaCO3 towards saturation, closed to gas. `approach` is the share of the way it
 * comes in its contact time: 1 = saturated. x mol/kg dissolved adds x calcium, 2x alkalinity and x carbon. A water
 * that is saturated already takes up nothing and leaves nothing.
 *
 * Source: stoichiometry of calcite; saturation as `precipitationPotential`. The approach of a cartridge follows from
 * its grain, size and flow and is not published for small ones: common practice 0.5 to 1, no source.
 * Range: as `speciate`. Error: of the approach above all; read pH or dissolved solids after the cartridge.
 */
export function remineralise(water: ConservedWater, approach: number): Outcome<Remineralised> {
  if (!(approach >= 0 && approach <= 1)) return refused("approach-out-of-range", { approach });
  return mapOutcome(precipitationPotential(water), ({ mgPerLCaCO3 }) => {
    const dissolvedMgPerLCaCO3 = approach * Math.max(0, -mgPerLCaCO3);
    const molPerKg = dissolvedMgPerLCaCO3 / CACO3_G_PER_MOL / 1000;
    return known({
      dissolvedMgPerLCaCO3,
      water: {
        temperatureC: water.temperatureC,
        totals: { ...water.totals, Ca: water.totals.Ca + molPerKg },
        alkalinityEqPerKg: water.alkalinityEqPerKg + 2 * molPerKg,
        carbonMolPerKg: water.carbonMolPerKg + molPerKg,
      },
    });
  });
}
