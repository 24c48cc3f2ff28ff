import { known, mapOutcome } from "@tapside/quantities";
import { type CustomaryIndexId, customaryIndices, speciate } from "@tapside/water";
import { rowVerb } from "./row-verb.ts";
import { allShown, analysisIn, orBlank } from "./water-input.ts";

const COLUMNS: Readonly<Record<CustomaryIndexId, string>> = {
  langelier: "LSI_thermodynamic",
  langelierSimplified: "LSI_simplified_formula",
  ryznar: "Ryznar_simplified_formula",
  puckorius: "Puckorius_simplified_formula",
  larsonSkold: "Larson_Skold",
  aggressive: "aggressive_index",
};

/** The indices people ask for by name, one water a row; a water that cannot be is refused first. */
export const waterIndicesVerb = rowVerb({
  summary: "the customary indices of one water a row: Langelier, Ryznar, Puckorius, Larson-Skold, aggressive",
  columns: Object.values(COLUMNS),
  reads: analysisIn(),
  answer: (water) =>
    mapOutcome(speciate(water), () => {
      const indices = customaryIndices(water);
      const cells = Object.entries(COLUMNS).map(([id, column]) => [
        column,
        orBlank(indices[id as CustomaryIndexId], (value) => value),
      ]);
      return known(allShown(Object.fromEntries(cells)));
    }),
});
