import { known, type Outcome } from "@tapside/quantities";
import { AIR_CO2_ATM, type BoiledDown, boilDown, MOLAR_MASS, speciate } from "@tapside/water";
import { all, mapReader, positive } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { allShown, analysisIn, orBlank } from "./water-input.ts";

const BOILING_C = 100;
const WAYS = ["closed", "pCO2_3.4"] as const;

function wayColumns(way: string, boiled: Outcome<BoiledDown>): Record<string, number> {
  return {
    [`pH_${way}`]: orBlank(boiled, (b) => b.water.pH),
    [`water_kg_${way}`]: orBlank(boiled, (b) => b.waterKgPerKg),
    [`CaCO3_scale_mg_per_kg_feed_${way}`]: orBlank(boiled, (b) => b.calciteMgPerKgFeed),
    [`CaSO4_scale_mg_per_kg_feed_${way}`]: orBlank(boiled, (b) => b.anhydriteMgPerKgFeed),
    [`Ca_left_mg_kgw_${way}`]: orBlank(boiled, (b) => b.water.totals.Ca * MOLAR_MASS.Ca * 1000),
    [`alk_left_CaCO3_mg_kgw_${way}`]: orBlank(boiled, (b) => b.water.alkalinityEqPerKg * 50050),
    [`SI_SiO2a_${way}`]: orBlank(boiled, (b) => b.water.saturation.amorphousSilica),
    [`ionic_strength_${way}`]: orBlank(boiled, (b) => b.water.ionicStrengthMolPerKg),
  };
}

/** Boiling down at 100 °C to the row's concentration factor, closed and open to air. */
export const waterBoilVerb = rowVerb({
  summary: "one water a row boiled down at 100 °C, scale laid down closed and losing CO2",
  columns: WAYS.flatMap((way) => [
    `pH_${way}`,
    `water_kg_${way}`,
    `CaCO3_scale_mg_per_kg_feed_${way}`,
    `CaSO4_scale_mg_per_kg_feed_${way}`,
    `Ca_left_mg_kgw_${way}`,
    `alk_left_CaCO3_mg_kgw_${way}`,
    `SI_SiO2a_${way}`,
    `ionic_strength_${way}`,
  ]),
  reads: all({
    feed: mapReader(analysisIn(), speciate),
    concentrationFactor: positive("concentration_factor"),
  }),
  answer: ({ feed, concentrationFactor }) => {
    const boiling = { temperatureC: BOILING_C, concentrationFactor };
    const closed = boilDown(feed, boiling);
    const open = boilDown(feed, { ...boiling, co2Atm: AIR_CO2_ATM });
    if (closed.kind === "refused" && open.kind === "refused") return closed;
    return known(allShown({ ...wayColumns("closed", closed), ...wayColumns("pCO2_3.4", open) }));
  },
});
