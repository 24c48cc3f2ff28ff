import { USUAL_MONTHS } from "@tapside/assessment";
import type { PartRole, Unit } from "@tapside/records";
import type { FieldSpec } from "../../look/form.tsx";
import { officeWords } from "../../words/office.ts";
import { setupWords } from "../../words/setup.ts";
import { choicesOf, PRESSURE } from "./units-offered.ts";

const { unit: words, part, lot, serial, fittedOn, temperatureForms } = setupWords;

/** Asked of a unit that hangs nowhere. */
export const storedSpecs: readonly FieldSpec[] = [
  { kind: "text", field: "storedAt", label: officeWords.storedAt },
];

const unitSpecs: readonly FieldSpec[] = [
  { kind: "text", field: "name", label: words.name, required: true },
  { kind: "text", field: "serial", label: serial },
  {
    kind: "number",
    field: "ratedPermeateLPerH",
    label: words.permeate,
    baseUnit: "L/h",
    units: ["gpd", "L/h", "mL/min"],
    range: [0.1, 1000],
  },
  {
    kind: "number",
    field: "ratedRejectLPerH",
    label: words.reject,
    baseUnit: "L/h",
    units: ["L/h", "gpd", "mL/min"],
    range: [0.1, 3000],
  },
  {
    kind: "number",
    field: "ratedRecoveryPercent",
    label: words.recovery,
    baseUnit: "",
    units: [""],
    range: [1, 95],
  },
  {
    kind: "number",
    field: "ratedRejectionPercent",
    label: words.rejection,
    baseUnit: "",
    units: [""],
    range: [20, 99.99],
  },
  {
    kind: "number",
    field: "testPressureKPaGauge",
    label: words.testPressure,
    baseUnit: "kPa",
    units: PRESSURE,
    range: [50, 3000],
  },
  {
    kind: "number",
    field: "testTemperatureC",
    label: words.testTemperature,
    baseUnit: "°C",
    units: ["°C", "°F"],
    range: [1, 60],
  },
  {
    kind: "number",
    field: "testFeedMgPerL",
    label: words.testFeed,
    baseUnit: "mg/L",
    units: ["mg/L"],
    range: [10, 10000],
  },
  {
    kind: "number",
    field: "tankL",
    label: words.tank,
    baseUnit: "L",
    units: ["gal", "L"],
    range: [0.5, 1000],
  },
  {
    kind: "number",
    field: "tankPlatePressureKPaGauge",
    label: words.tankPlate,
    baseUnit: "kPa",
    units: PRESSURE,
    range: [100, 2000],
  },
  {
    kind: "number",
    field: "shutOffRatio",
    label: words.shutOffRatio,
    baseUnit: "",
    units: [""],
    range: [0.4, 1],
  },
  {
    kind: "choice",
    field: "temperatureForm",
    label: words.temperatureForm,
    choices: choicesOf(temperatureForms),
  },
  { kind: "date", field: "fittedOn", label: fittedOn },
  { kind: "flag", field: "twoElements", label: words.twoElements },
  {
    kind: "choice",
    field: "elementArrangement",
    label: words.elementArrangement,
    choices: choicesOf(words.arrangements),
  },
  { kind: "flag", field: "twoTanks", label: words.twoTanks },
  { kind: "flag", field: "ventedTank", label: words.ventedTank },
  { kind: "flag", field: "permeatePump", label: words.permeatePump },
  {
    kind: "number",
    field: "boosterShutOffRiseKPa",
    label: words.boosterRise,
    baseUnit: "kPa",
    units: PRESSURE,
    range: [10, 1500],
  },
  {
    kind: "number",
    field: "boosterOpenFlowLPerH",
    label: words.boosterOpenFlow,
    baseUnit: "L/h",
    units: ["L/h", "gpd", "mL/min"],
    range: [5, 3000],
  },
  {
    kind: "number",
    field: "boosterOffBelowKPaGauge",
    label: words.boosterOffBelow,
    baseUnit: "kPa",
    units: PRESSURE,
    range: [5, 1000],
  },
  { kind: "set", field: "portsAbsent", label: words.portsAbsent, choices: choicesOf(words.ports) },
  { kind: "flag", field: "remineraliser", label: words.remineraliser },
  { kind: "flag", field: "blendValve", label: words.blendValve },
  {
    kind: "number",
    field: "blendPercent",
    label: words.blendPercent,
    baseUnit: "",
    units: [""],
    range: [0.5, 90],
  },
];

/** Asked only of units that have the part. */
const ASKED_OF: Readonly<Record<string, (unit: Partial<Unit>) => boolean>> = {
  permeatePump: (unit) => unit.ventedTank !== true,
  elementArrangement: (unit) => unit.twoElements === true,
  blendPercent: (unit) => unit.blendValve === true,
};

export const unitSpecsOf = (unit: Partial<Unit>): readonly FieldSpec[] =>
  unitSpecs.filter(({ field }) => ASKED_OF[field]?.(unit) ?? true);

const hourSpecs: readonly FieldSpec[] = (["ratedHours", "hoursAtFitting"] as const).map((field) => ({
  kind: "number",
  field,
  label: part[field],
  baseUnit: "h",
  units: ["h"],
  range: [0, 1e6],
}));

export const partSpecs = (role: PartRole | undefined): readonly FieldSpec[] => [
  { kind: "choice", field: "role", label: part.role, choices: choicesOf(part.roles) },
  { kind: "date", field: "fittedOn", label: fittedOn },
  {
    kind: "number",
    field: "meterAtFittingM3",
    label: part.meterAtFitting,
    baseUnit: "m³",
    units: ["m³", "gal", "L"],
    range: [0, 1e6],
  },
  {
    kind: "number",
    field: "ratedLitres",
    label: part.ratedLitres,
    baseUnit: "L",
    units: ["m³", "gal", "L"],
    range: [10, 1e7],
  },
  ...(role === "carbon" || role === "postCarbon" || role === undefined
    ? [
        {
          kind: "number",
          field: "ratedChlorineMgPerL",
          label: part.ratedChlorine,
          baseUnit: "mg/L",
          units: ["mg/L"],
          range: [0.1, 10],
        } as const,
      ]
    : []),
  ...(role === "scaleInhibitor"
    ? [
        {
          kind: "number",
          field: "heldCalciteIndex",
          label: part.heldCalciteIndex,
          baseUnit: "",
          units: [""],
          range: [0, 3],
        } as const,
      ]
    : []),
  ...(role === "uvLamp" || role === "softener" ? hourSpecs : []),
  {
    kind: "number",
    field: "intervalMonths",
    label: part.interval,
    baseUnit: "",
    units: [""],
    range: [1, 120],
    ...(role && USUAL_MONTHS[role] !== undefined && { otherwise: USUAL_MONTHS[role] }),
  },
  { kind: "text", field: "lot", label: lot },
  { kind: "text", field: "serial", label: serial },
];
