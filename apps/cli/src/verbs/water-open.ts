import { known } from "@tapside/quantities";
import { conductivity, conductivityAt25, precipitationPotential, speciate, type Water } from "@tapside/water";
import { mapReader } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { allShown, analysisIn, orBlank } from "./water-input.ts";

const CO2_MG_PER_MOL = 44009.5;

function saturationColumns({ saturation: s }: Water) {
  return {
    SI_calcite: s.calcite,
    SI_aragonite: s.aragonite,
    SI_gypsum: s.gypsum,
    SI_anhydrite: s.anhydrite,
    SI_fluorite: s.fluorite,
    SI_SiO2a: s.amorphousSilica,
    SI_chalcedony: s.chalcedony,
  };
}

function openColumns(water: Water) {
  const m = water.molality;
  const potential = precipitationPotential(water);
  const gamma = water.activityCoefficient;
  return {
    ionic_strength_mol_kgw: water.ionicStrengthMolPerKg,
    EC25_McCleskey: orBlank(conductivityAt25(water), (ec) => ec),
    EC_T_McCleskey: conductivity(water),
    ...saturationColumns(water),
    CO2aq_mg: m.CO2 * CO2_MG_PER_MOL,
    HCO3_mol: m.HCO3,
    CO3_mol: m.CO3,
    CaCO3aq_mol: m.CaCO3,
    CaHCO3_mol: m.CaHCO3,
    CCPP_mg_CaCO3: orBlank(potential, (p) => p.mgPerLCaCO3),
    pH_eq: orBlank(potential, (p) => p.after.pH),
    SI_quartz: water.saturation.quartz,
    Ca_free_mol: m.Ca,
    MgHCO3_mol: m.MgHCO3,
    MgCO3aq_mol: m.MgCO3,
    CaSO4aq_mol: m.CaSO4,
    MgSO4aq_mol: m.MgSO4,
    C_total_mol: water.carbonMolPerKg,
    OH_mol: m.OH,
    gamma_Ca: gamma.Ca,
    gamma_HCO3: gamma.HCO3,
    gamma_CO3: gamma.CO3,
  };
}

const COLUMNS: readonly (keyof ReturnType<typeof openColumns>)[] = [
  "ionic_strength_mol_kgw",
  "EC25_McCleskey",
  "EC_T_McCleskey",
  "SI_calcite",
  "SI_aragonite",
  "SI_gypsum",
  "SI_anhydrite",
  "SI_fluorite",
  "SI_SiO2a",
  "SI_chalcedony",
  "CO2aq_mg",
  "HCO3_mol",
  "CO3_mol",
  "CaCO3aq_mol",
  "CaHCO3_mol",
  "CCPP_mg_CaCO3",
  "pH_eq",
  "SI_quartz",
  "Ca_free_mol",
  "MgHCO3_mol",
  "MgCO3aq_mol",
  "CaSO4aq_mol",
  "MgSO4aq_mol",
  "C_total_mol",
  "OH_mol",
  "gamma_Ca",
  "gamma_HCO3",
  "gamma_CO3",
];

/** Speciation, indices, precipitation potential and conductivity of one analysis a row. */
export const waterOpenVerb = rowVerb({
  summary: "one water a row: species, saturation, precipitation potential, conductivity",
  columns: COLUMNS,
  reads: mapReader(analysisIn(), speciate),
  answer: (water) => known(allShown(openColumns(water))),
});
