import type { InstrumentKind } from "@tapside/records";
import type { FieldSpec } from "../../look/form.tsx";
import { setupWords } from "../../words/setup.ts";
import { choicesOf, SCALES } from "./units-offered.ts";

const { instrument: words, scale, scaleAsk } = setupWords;

/** Units the display of each kind may show. */
const DISPLAYS: Readonly<Partial<Record<InstrumentKind, readonly string[]>>> = {
  tds: ["ppm", "µS/cm"],
  pressure: ["psi", "bar", "kPa"],
  temperature: ["°C", "°F"],
  flow: ["s", "L", "gal"],
  chlorine: ["mg/L", "ppm"],
  hardness: ["gpg", "°dH", "°fH", "mg/L CaCO3", "mmol/L"],
  meter: ["m³", "L", "gal"],
};

const ALL = ["mg/L", "ppm", "mg/L CaCO3", "gpg", "°dH", "pH", "mm"];

const number = (field: string, label: string, most: number): FieldSpec => ({
  kind: "number",
  field,
  label,
  baseUnit: "",
  units: [""],
  range: [0, most],
});

/** An instrument; its unit and scale are asked for once it is known what it reads. */
export const instrumentSpecs = (kind: InstrumentKind | undefined): readonly FieldSpec[] => [
  { kind: "text", field: "name", label: words.name, required: true },
  { kind: "choice", field: "kind", label: words.reads, choices: choicesOf(words.kinds) },
  ...(kind
    ? [
        {
          kind: "choice",
          field: "unit",
          label: words.unit,
          ask: words.unitAsk,
          choices: (DISPLAYS[kind] ?? ALL).map((unit) => [unit, unit] as const),
        } as const,
      ]
    : []),
  ...(kind === "tds"
    ? [{ kind: "choice", field: "scale", label: scale, choices: SCALES, ask: scaleAsk } as const]
    : []),
  number("accuracyPercentOfReading", words.percentOfReading, 50),
  number("accuracyPercentOfFullScale", words.percentOfFullScale, 50),
  number("fullScale", words.fullScale, 1e6),
  number("resolution", words.resolution, 1000),
  { kind: "date", field: "lastCheckedOn", label: words.lastChecked },
  { kind: "flag", field: "usual", label: words.usual },
];
