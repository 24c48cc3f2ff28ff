import type { CommandVerb, Example } from "./command-verb.ts";
import { bookVerbs } from "./verbs/book.ts";
import { convertVerb } from "./verbs/convert.ts";
import { diagnoseVerb } from "./verbs/diagnose.ts";
import { kitchenDayVerb } from "./verbs/kitchen-day.ts";
import { procedureVerbs } from "./verbs/procedures.ts";
import { rowCommand } from "./verbs/row-runner.ts";
import type { RowVerb } from "./verbs/row-verb.ts";
import { unitVerbs } from "./verbs/unit.ts";
import { waterVerbs } from "./verbs/water.ts";
import { waterAnalysisVerb } from "./verbs/water-analysis.ts";
import { waterBlendVerb } from "./verbs/water-blend.ts";

const rowExamples: Readonly<Record<string, readonly Example[]>> = {
  unit: [{ args: ["unit", "reference/small-ro-unit/operating_points.csv"], prints: "permeate_L_h" }],
  "unit fill": [{ args: ["unit", "fill", "reference/small-ro-unit/fillings.csv"], prints: "fill_time_h" }],
  "unit fit": [
    { args: ["unit", "fit", "reference/small-ro-unit/operating_points.csv"], prints: "A_L_m2_h_bar_low" },
  ],
  "unit ions": [{ args: ["unit", "ions", "examples/larkmoor-concentrate.csv"], prints: "scale_summer" }],
  "unit standby": [
    { args: ["unit", "standby", "reference/small-ro-unit/fillings.csv"], prints: "waste_min" },
  ],
  "unit questions": [
    { args: ["unit", "questions", "reference/small-ro-unit/fillings.csv"], prints: "second_tank_L" },
  ],
  "kitchen day": [{ args: ["kitchen", "day", "examples/larkmoor-kitchen-days.csv"], prints: "least_remedy" }],
  dose: [{ args: ["dose", "examples/larkmoor-doses.csv"], prints: "dose_mL" }],
  steam: [{ args: ["steam", "examples/larkmoor-kitchen.csv"], prints: "steam_kg_h" }],
  carbon: [{ args: ["carbon", "examples/larkmoor-kitchen.csv"], prints: "carbon_days" }],
  scald: [{ args: ["scald", "examples/larkmoor-kitchen.csv"], prints: "burns_in_s" }],
  water: [{ args: ["water", "reference/water-cases/open.csv"], prints: "SI_calcite" }],
  "water indices": [{ args: ["water", "indices", "reference/water-cases/open.csv"], prints: "Larson_Skold" }],
  "water heat": [{ args: ["water", "heat", "reference/water-cases/heating_open.csv"], prints: "CCPP_60" }],
  "water mix": [{ args: ["water", "mix", "reference/water-cases/blending_open.csv"], prints: "OB01" }],
  "water degas": [
    { args: ["water", "degas", "reference/water-cases/degassing_open.csv"], prints: "pH_degassed" },
  ],
  "water split": [{ args: ["water", "split", "reference/water-cases/ro_open.csv"], prints: "perm_Ca" }],
  "water complete": [
    { args: ["water", "complete", "reference/water-cases/open.csv"], prints: "SI_calcite_90_p50" },
  ],
  "water suits": [{ args: ["water", "suits", "examples/larkmoor-appliances.csv"], prints: "blend_low" }],
  "water boil": [
    { args: ["water", "boil", "reference/water-cases/evaporation_open.csv"], prints: "water_kg_closed" },
  ],
};

const rowCommands = (verbs: Readonly<Record<string, RowVerb>>) =>
  Object.entries(verbs).map(
    ([name, verb]) => [name, rowCommand(name, verb, rowExamples[name] ?? [])] as const,
  );

/** Every verb by its words. */
export const VERBS: Readonly<Record<string, CommandVerb>> = Object.fromEntries([
  ["convert", convertVerb] as const,
  ...Object.entries(bookVerbs),
  ["diagnose", diagnoseVerb] as const,
  ...rowCommands(unitVerbs),
  ...rowCommands({ "kitchen day": kitchenDayVerb }),
  ...rowCommands(procedureVerbs),
  ...rowCommands(waterVerbs),
  ["water analysis", waterAnalysisVerb] as const,
  ["water blend", waterBlendVerb] as const,
]);
