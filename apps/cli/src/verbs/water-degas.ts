import { known, mapOutcome } from "@tapside/quantities";
import { type Degassed, degas, speciate, type Water } from "@tapside/water";
import { mapReader } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { allShown, analysisIn } from "./water-input.ts";

const degasColumns = (before: Water, after: Degassed) => ({
  SI_calcite_before: before.saturation.calcite,
  CO2aq_before_mg: before.molality.CO2 * 44009.5,
  pH_degassed: after.water.pH,
  SI_calcite_degassed: after.water.saturation.calcite,
  CO2aq_degassed_mg: after.water.molality.CO2 * 44009.5,
  CO2_removed_mg: after.co2RemovedMgPerL,
  C_total_degassed_mol: after.water.carbonMolPerKg,
  pH_degassed_and_calcite_eq: after.withCalcite.water.pH,
  CaCO3_precipitated_mg: after.withCalcite.precipitatedMgPerLCaCO3,
});

/** Opening to air at the row's temperature, then with calcite allowed to precipitate. */
export const waterDegasVerb = rowVerb({
  summary: "one water a row opened to air (CO2 10^-3.4 atm), without and with calcite precipitating",
  columns: [
    "SI_calcite_before",
    "CO2aq_before_mg",
    "pH_degassed",
    "SI_calcite_degassed",
    "CO2aq_degassed_mg",
    "CO2_removed_mg",
    "C_total_degassed_mol",
    "pH_degassed_and_calcite_eq",
    "CaCO3_precipitated_mg",
  ],
  reads: mapReader(analysisIn(), speciate),
  answer: (water) => mapOutcome(degas(water), (after) => known(allShown(degasColumns(water, after)))),
});
