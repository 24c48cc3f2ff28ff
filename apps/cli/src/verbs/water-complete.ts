import { known, mapOutcome, missing, type Outcome, refused } from "@tapside/quantities";
import {
  CONSTITUENTS,
  type ConstituentId,
  calciteSaturationAt,
  completeWater,
  type FieldReadings,
  LABORATORY_UNCERTAINTY,
  mostTellingReadings,
  type PriorComponent,
  priorFromWaters,
  realWaterPrior,
  realWaters,
  seededUniform,
  type WaterAnalysis,
} from "@tapside/water";
import { intervalCells, intervalColumns } from "./interval-cells.ts";
import { all, mapReader, optional, type Reader, text } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { ionsIn } from "./water-input.ts";

const QUANTITIES = [...CONSTITUENTS.map((id) => `${id}_mg`), "Alk_CaCO3_mg", "pH", "SI_calcite_90"];
const SAMPLES = 400;
const SEED = 90;

const numbers = {
  temperatureC: optional("T_C"),
  pH: optional("pH"),
  alkalinityMgPerLCaCO3: optional("Alk_CaCO3_mg"),
  hardnessMgPerLCaCO3: optional("hardness_CaCO3_mg"),
  ec25UsPerCm: optional("EC25_uScm"),
  tdsMgPerL: optional("TDS_mg"),
};

/** Where each reading stands in the table. */
const COLUMN_OF: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(numbers).map(([reading, { may }]) => [reading, may[0]!]),
);

/** Whatever the row holds; blanks are what is asked for. */
const readingsOfRow: Reader<FieldReadings> = mapReader(
  all({ numbers: all(numbers), ions: ionsIn() }),
  ({ numbers: read, ions }) => {
    const present = Object.entries(read).filter(([, value]) => value !== undefined);
    if (present.length + Object.keys(ions).length === 0)
      return missing(...Object.values(numbers).flatMap(({ may }) => may));
    return known({ ...Object.fromEntries(present), ions });
  },
);

function valuesOf(quantity: string, samples: readonly WaterAnalysis[]): number[] {
  if (quantity === "pH") return samples.map((water) => water.pH);
  if (quantity === "Alk_CaCO3_mg") return samples.map((water) => water.alkalinityMgPerLCaCO3);
  if (quantity !== "SI_calcite_90")
    return samples.map((water) => water.ions[quantity.slice(0, -3) as ConstituentId] ?? 0);
  return samples
    .map((water) => calciteSaturationAt(water, 90))
    .flatMap((outcome) =>
      outcome.kind === "known" && Number.isFinite(outcome.value) ? [outcome.value] : [],
    );
}

const priors = new Map<string, readonly PriorComponent[]>();

/** The prior without one of its sources, named in the column `without_source`: for judging it on waters it has not seen. */
function priorWithout(without: string): Outcome<readonly PriorComponent[]> {
  if (without === "") return known(realWaterPrior());
  const waters = realWaters();
  const others = waters.filter(({ source }) => source !== without);
  if (others.length === waters.length) return refused("source-unknown", { source: without });
  const prior = priors.get(without) ?? priorFromWaters(others);
  priors.set(without, prior);
  return known(prior);
}

/** The column whose reading would narrow SI calcite at 90 °C most; blank where none is left to take. */
function nextReading(samples: readonly WaterAnalysis[], readings: FieldReadings): string {
  const telling = mostTellingReadings(samples, readings);
  const reading = telling.kind === "known" ? telling.value[0]?.reading : undefined;
  if (reading === undefined) return "";
  return COLUMN_OF[reading] ?? `${reading}_mg`;
}

function intervals(samples: readonly WaterAnalysis[]): Record<string, number | string> {
  const out: Record<string, number | string> = {};
  for (const quantity of QUANTITIES) {
    Object.assign(out, intervalCells(quantity, valuesOf(quantity, samples)));
  }
  return out;
}

/** A water completed from whatever was read: 5, 50 and 95 % of every ion and of the calcite index at 90 °C. */
export const waterCompleteVerb = rowVerb({
  summary:
    "one set of readings a row completed to a water: p05, p50, p95 of every ion and of SI calcite at 90 °C, and the next reading to take",
  columns: [...QUANTITIES.flatMap(intervalColumns), "next_reading"],
  reads: all({ readings: readingsOfRow, prior: mapReader(text("without_source"), priorWithout) }),
  answer: ({ readings, prior }) =>
    mapOutcome(
      completeWater(readings, {
        random: seededUniform(SEED),
        samples: SAMPLES,
        uncertainty: LABORATORY_UNCERTAINTY,
        prior,
      }),
      (samples) => known({ ...intervals(samples), next_reading: nextReading(samples, readings) }),
    ),
});
