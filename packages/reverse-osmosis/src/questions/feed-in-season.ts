import { known, mapOutcome, type Outcome } from "@tapside/quantities";
import { heatClosed, speciate, type WaterAnalysis } from "@tapside/water";

/**
 * A feed water as it comes in another season: warmed or cooled with nothing let out, as in a pipe.
 *
 * Formula: alkalinity, carbon and ions kept; pH solved anew at the temperature
 * Source: `heatClosed`.
 * Range: 0 to 45 °C.
 * Error: as `speciate`; that the mains carry another water in summer is not told by this.
 * @example
 * ```ts
 * import { feedInSeason } from "@tapside/reverse-osmosis";
 * const feed = { temperatureC: 10, pH: 7.5, alkalinityMgPerLCaCO3: 150, ions: { Ca: 60, Mg: 5, Na: 10, Cl: 20, SO4: 20 } };
 * const summer = feedInSeason(feed, 20);
 * summer.kind === "known" ? summer.value.pH : 0; // => 7.41
 * ```
 */
export const feedInSeason = (feed: WaterAnalysis, temperatureC: number): Outcome<WaterAnalysis> =>
  mapOutcome(speciate(feed), (solved) =>
    mapOutcome(heatClosed(solved, temperatureC), ({ pH }) => known({ ...feed, temperatureC, pH })),
  );
