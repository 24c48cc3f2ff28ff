import { known, mapOutcome } from "@tapside/quantities";
import { blend, heatClosed, speciate, speciateConserved, type Water } from "@tapside/water";
import { all, mapReader, number } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { allShown, analysisIn, orBlank } from "./water-input.ts";

const HEATED_C = 95;

function mixColumns(feed: Water, permeate: Water, mixed: Water) {
  const hot = heatClosed(mixed, HEATED_C);
  return {
    pH_feed_in: feed.pH,
    SI_feed: feed.saturation.calcite,
    SI_perm: permeate.saturation.calcite,
    pH_mix: mixed.pH,
    SI_calcite_mix: mixed.saturation.calcite,
    Alk_mix_CaCO3_mg: mixed.alkalinityEqPerKg * 50050,
    CO2aq_mix_mg: mixed.molality.CO2 * 44009.5,
    ionic_strength_mix: mixed.ionicStrengthMolPerKg,
    SI_calcite_mix_heated95: orBlank(hot, (water) => water.saturation.calcite),
    pH_mix_heated95: orBlank(hot, (water) => water.pH),
  };
}

/** A blend valve: `f_feed` of the feed, the rest permeate, then heated to 95 °C. */
export const waterMixVerb = rowVerb({
  summary: "feed and permeate blended, one blend a row, cold and heated to 95 °C",
  columns: [
    "pH_feed_in",
    "SI_feed",
    "SI_perm",
    "pH_mix",
    "SI_calcite_mix",
    "Alk_mix_CaCO3_mg",
    "CO2aq_mix_mg",
    "ionic_strength_mix",
    "SI_calcite_mix_heated95",
    "pH_mix_heated95",
  ],
  reads: all({
    feed: mapReader(analysisIn("feed_"), speciate),
    permeate: mapReader(analysisIn("perm_"), speciate),
    feedFraction: number("f_feed"),
  }),
  answer: ({ feed, permeate, feedFraction }) =>
    mapOutcome(mapOutcome(blend(feed, permeate, feedFraction), speciateConserved), (mixed) =>
      known(allShown(mixColumns(feed, permeate, mixed))),
    ),
});
