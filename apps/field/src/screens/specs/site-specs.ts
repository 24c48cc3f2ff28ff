import { LANGUAGES } from "@tapside/words";
import type { FieldSpec } from "../../look/form.tsx";
import { setupWords } from "../../words/setup.ts";

const { site: words, point } = setupWords;

export const siteSpecs: readonly FieldSpec[] = [
  { kind: "text", field: "name", label: words.name, required: true },
  { kind: "text", field: "askName", label: words.askName },
  { kind: "text", field: "askRole", label: words.askRole },
  { kind: "text", field: "askPhone", label: words.askPhone },
  { kind: "text", field: "key", label: words.key },
  { kind: "text", field: "hours", label: words.hours },
  { kind: "text", field: "address", label: words.address },
  { kind: "text", field: "copiesTo", label: words.copiesTo },
  { kind: "text", field: "chain", label: words.chain },
  { kind: "text", field: "code", label: words.code },
  { kind: "text", field: "waterSource", label: words.waterSource },
  {
    kind: "number",
    field: "altitudeM",
    label: words.altitude,
    baseUnit: "m",
    units: ["m", "ft"],
    range: [-430, 5200],
  },
  {
    kind: "choice",
    field: "language",
    label: words.language,
    choices: LANGUAGES.map((language) => [language, words.languages[language]] as const),
  },
];

export const pointSpecs: readonly FieldSpec[] = [
  { kind: "text", field: "name", label: point.name, required: true },
  { kind: "text", field: "where", label: point.where },
  { kind: "text", field: "isolationValve", label: point.isolationValve },
  { kind: "text", field: "drain", label: point.drain },
  { kind: "flag", field: "bypassFitted", label: point.bypassFitted },
];
