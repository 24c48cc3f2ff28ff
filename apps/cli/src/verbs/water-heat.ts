import { known, mapOutcome, type Outcome } from "@tapside/quantities";
import { heatClosed, precipitationPotential, speciate, type Water } from "@tapside/water";
import { mapReader } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { allShown, analysisIn, orBlank } from "./water-input.ts";

const COLD_C = 15;
const HOT_C = [60, 80, 100] as const;

function hotColumns(outcome: Outcome<Water>, at: number): Record<string, number> {
  const si = (id: keyof Water["saturation"]) => orBlank(outcome, (water) => water.saturation[id]);
  const potential = mapOutcome(outcome, precipitationPotential);
  return {
    [`pH_${at}`]: orBlank(outcome, (water) => water.pH),
    [`SI_calcite_${at}`]: si("calcite"),
    [`SI_aragonite_${at}`]: si("aragonite"),
    [`SI_anhydrite_${at}`]: si("anhydrite"),
    [`SI_SiO2a_${at}`]: si("amorphousSilica"),
    [`CCPP_${at}_mg_CaCO3`]: orBlank(potential, (p) => p.mgPerLCaCO3),
    [`pH_after_eq_${at}`]: orBlank(potential, (p) => p.after.pH),
  };
}

function heatColumns(water: Water): Record<string, number> {
  const cold = heatClosed(water, COLD_C);
  const columns: Record<string, number> = {
    [`pH_${COLD_C}`]: orBlank(cold, (w) => w.pH),
    [`SI_calcite_${COLD_C}`]: orBlank(cold, (w) => w.saturation.calcite),
  };
  for (const at of HOT_C) Object.assign(columns, hotColumns(heatClosed(water, at), at));
  return columns;
}

/** Closed heating to 60, 80 and 100 °C, one water a row. */
export const waterHeatVerb = rowVerb({
  summary: "closed heating of one water a row to 60, 80 and 100 °C",
  columns: [
    `pH_${COLD_C}`,
    `SI_calcite_${COLD_C}`,
    ...HOT_C.flatMap((at) => [
      `pH_${at}`,
      `SI_calcite_${at}`,
      `SI_aragonite_${at}`,
      `SI_anhydrite_${at}`,
      `SI_SiO2a_${at}`,
      `CCPP_${at}_mg_CaCO3`,
      `pH_after_eq_${at}`,
    ]),
  ],
  reads: mapReader(analysisIn(), speciate),
  answer: (water) => known(allShown(heatColumns(water))),
});
