import type { LimitQuantity } from "@tapside/records";
import type { FieldSpec } from "../../look/form.tsx";
import { waterPageWords } from "../../water/words.ts";
import { setupWords as words } from "../../words/setup.ts";
import { choicesOf, PRESSURE, SCALES } from "./units-offered.ts";

const type: FieldSpec = {
  kind: "choice",
  field: "type",
  label: words.appliance.kind,
  choices: choicesOf(words.applianceTypes),
};

const minimumPressure: FieldSpec = {
  kind: "number",
  field: "minimumPressureKPaGauge",
  label: words.appliance.minimumPressure,
  baseUnit: "kPa",
  units: PRESSURE,
  range: [0, 1000],
};

/** An appliance; `models` are the types set once for all of their kind. */
export const applianceSpecs = (models: readonly (readonly [string, string])[]): readonly FieldSpec[] => [
  { kind: "text", field: "name", label: words.appliance.name, required: true },
  type,
  ...(models.length > 0
    ? [{ kind: "choice", field: "model", label: words.appliance.model, choices: models } as const]
    : []),
  minimumPressure,
  {
    kind: "number",
    field: "litresPerDay",
    label: words.appliance.litresPerDay,
    baseUnit: "L",
    units: ["L", "gal"],
    range: [0.1, 5000],
  },
  { kind: "time", field: "usedFrom", label: words.appliance.usedFrom },
  { kind: "time", field: "usedUntil", label: words.appliance.usedUntil },
  {
    kind: "choice",
    field: "counter",
    label: words.appliance.counter,
    choices: [
      ["h", words.appliance.hours],
      ["L", words.appliance.litres],
    ],
  },
  {
    kind: "number",
    field: "hottestC",
    label: waterPageWords.hottest,
    baseUnit: "°C",
    units: ["°C", "°F"],
    range: [1, 160],
  },
  {
    kind: "choice",
    field: "steelGrade",
    label: waterPageWords.steel,
    choices: [
      ["304", "304"],
      ["316", "316"],
    ],
    ask: waterPageWords.steelAsk,
  },
  { kind: "yesNo", field: "copperOrBrass", label: waterPageWords.copper, ask: waterPageWords.copperAsk },
];

export const modelSpecs: readonly FieldSpec[] = [
  { kind: "text", field: "name", label: words.model.name, required: true },
  type,
  minimumPressure,
  { kind: "text", field: "source", label: words.model.source },
  { kind: "date", field: "sourceDate", label: words.model.sourceDate },
];

interface Measured {
  readonly unit: string;
  readonly units: readonly string[];
  readonly range: readonly [number, number];
}

const HARDNESS: Measured = {
  unit: "mg/L CaCO3",
  units: ["mg/L CaCO3", "gpg", "°dH", "°fH"],
  range: [0, 5000],
};
const SOLUTE: Measured = { unit: "mg/L", units: ["mg/L"], range: [0, 5000] };

/** What a limit of each quantity is measured in; pH has no unit. */
export const LIMIT_UNITS: Readonly<Record<LimitQuantity, Measured>> = {
  tds: { unit: "ppm", units: ["ppm"], range: [0, 5000] },
  hardness: HARDNESS,
  alkalinity: HARDNESS,
  chloride: SOLUTE,
  chlorine: SOLUTE,
  silica: SOLUTE,
  pH: { unit: "", units: [""], range: [0, 14] },
};

/** Entries of a limit once it is known of what; nothing is taken for granted. */
export function limitSpecs(quantity: LimitQuantity | undefined): readonly FieldSpec[] {
  if (!quantity) return [];
  const { unit, units, range } = LIMIT_UNITS[quantity];
  const edge = (field: "low" | "high"): FieldSpec => ({
    kind: "number",
    field,
    label: words.limit[field],
    baseUnit: unit,
    units,
    range,
  });
  return [
    edge("low"),
    edge("high"),
    ...(quantity === "tds"
      ? [
          {
            kind: "choice",
            field: "scale",
            label: words.scale,
            choices: SCALES,
            ask: words.limitScaleAsk,
          } as const,
        ]
      : []),
    { kind: "text", field: "source", label: words.limit.source },
    { kind: "date", field: "sourceDate", label: words.limit.sourceDate },
  ];
}
