import { OFFICE_DEFAULTS } from "@tapside/assessment";
import { converted } from "@tapside/quantities";
import { defaultTemperatureForm } from "@tapside/reverse-osmosis";
import type { FieldSpec } from "../../look/form.tsx";
import { signOfPhone } from "../../words/decimal-sign.ts";
import { languageChosen } from "../../words/language-chosen.ts";
import { setupWords } from "../../words/setup.ts";
import { choicesOf, PRESSURE } from "./units-offered.ts";

const { settings: words, temperatureForms } = setupWords;
const named = (units: readonly string[]) => units.map((unit) => [unit, unit] as const);

export const settingsSpecs: readonly FieldSpec[] = [
  { kind: "text", field: "technician", label: words.technician },
  { kind: "text", field: "phone", label: words.phone },
  {
    kind: "choice",
    field: "pressureUnit",
    label: words.pressureUnit,
    choices: named(PRESSURE),
    otherwise: "psi",
  },
  {
    kind: "choice",
    field: "decimalSign",
    label: words.decimalSign,
    choices: [
      [".", words.point],
      [",", words.comma],
    ],
    otherwise: signOfPhone(languageChosen()) === "." ? words.point : words.comma,
  },
  { kind: "flag", field: "leftHand", label: words.leftHand },
];

/** What findings are judged by; a blank one is the house's own, shown in its place. */
export const ruleSpecs: readonly FieldSpec[] = [
  {
    kind: "choice",
    field: "temperatureForm",
    label: words.temperatureForm,
    choices: choicesOf(temperatureForms),
    otherwise: temperatureForms[defaultTemperatureForm],
  },
  {
    kind: "number",
    field: "filterDropLimitKPa",
    label: words.filterDrop,
    baseUnit: "kPa",
    units: PRESSURE,
    range: [1, 300],
    otherwise: converted(OFFICE_DEFAULTS.filterDropPsi, "psi", "kPa"),
  },
  {
    kind: "number",
    field: "flowRatioLimit",
    label: words.flowRatio,
    baseUnit: "",
    units: [""],
    range: [0.2, 1],
    otherwise: OFFICE_DEFAULTS.flowRatio,
  },
  {
    kind: "number",
    field: "saltRatioLimit",
    label: words.saltRatio,
    baseUnit: "",
    units: [""],
    range: [1, 10],
    otherwise: OFFICE_DEFAULTS.saltRatio,
  },
  {
    kind: "number",
    field: "shutOffRatio",
    label: words.shutOffRatio,
    baseUnit: "",
    units: [""],
    range: [0.4, 0.9],
    otherwise: 0.64,
  },
];
