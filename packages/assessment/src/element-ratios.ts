import { known, type Outcome, type Uncertain } from "@tapside/quantities";
import type { UnitFile } from "@tapside/records";
import { type StandardReadings, standardise, type TemperatureFormId } from "@tapside/reverse-osmosis";
import type { Figure } from "./assessment.ts";
import type { ElementReference } from "./element-reference.ts";
import { standardReadings } from "./from-records.ts";
import type { PhaseReadings } from "./internal/amounts.ts";
import { finite } from "./internal/finite.ts";
import { rememberWith } from "./internal/remember-with.ts";

export interface ElementRatios {
  readonly flowRatio: Outcome<Figure>;
  readonly saltRatio: Outcome<Figure>;
}

const compare = rememberWith(
  (now: StandardReadings, reference: StandardReadings, temperatureForm: TemperatureFormId) =>
    standardise(now, reference, { temperatureForm }),
);

/** Permeability and salt passage constant of the element against its own reference: 1 = as new. */
export function elementRatios(
  readings: PhaseReadings,
  reference: Outcome<ElementReference>,
  file: UnitFile,
  temperatureForm: TemperatureFormId,
): ElementRatios {
  const now = standardReadings(readings, file);
  const no = now.kind !== "known" ? now : reference.kind !== "known" ? reference : undefined;
  if (no || now.kind !== "known" || reference.kind !== "known") return { flowRatio: no!, saltRatio: no! };
  const both = compare(now.value, reference.value.readings, temperatureForm);
  if (both.kind !== "known") return { flowRatio: both, saltRatio: both };
  const figure = (ratio: Uncertain, unit: string) => finite(known({ ...ratio, unit }), "no-reference-salt");
  return {
    flowRatio: figure(both.value.waterRatio, "of new"),
    saltRatio: figure(both.value.saltRatio, "× new"),
  };
}
