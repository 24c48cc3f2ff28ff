import type { CommandVerb, Example } from "./command-verb.ts";
import { convertVerb } from "./verbs/convert.ts";
import { rowCommand } from "./verbs/row-runner.ts";
import type { RowVerb } from "./verbs/row-verb.ts";
import { unitVerbs } from "./verbs/unit.ts";

const rowExamples: Readonly<Record<string, readonly Example[]>> = {
  unit: [{ args: ["unit", "reference/small-ro-unit/operating_points.csv"], prints: "permeate_L_h" }],
  "unit fill": [{ args: ["unit", "fill", "reference/small-ro-unit/fillings.csv"], prints: "fill_time_h" }],
};

const rowCommands = (verbs: Readonly<Record<string, RowVerb>>) =>
  Object.entries(verbs).map(
    ([name, verb]) => [name, rowCommand(name, verb, rowExamples[name] ?? [])] as const,
  );

/** Every verb by its words. */
export const VERBS: Readonly<Record<string, CommandVerb>> = Object.fromEntries([
  ["convert", convertVerb] as const,
  ...rowCommands(unitVerbs),
]);
