import type { FieldSpec } from "../look/form.tsx";

const PRESSURE = ["psi", "bar", "kPa"] as const;
const SCALES = [
  ["NaCl", "NaCl"],
  ["442", "442"],
  ["KCl", "KCl"],
] as const;

export const siteSpecs: readonly FieldSpec[] = [
  { kind: "text", field: "name", label: "Site", required: true },
  { kind: "text", field: "askName", label: "Who to ask" },
  { kind: "text", field: "askRole", label: "Role" },
  { kind: "text", field: "askPhone", label: "Phone" },
  { kind: "text", field: "waterSource", label: "Water source" },
  {
    kind: "number",
    field: "altitudeM",
    label: "Altitude",
    baseUnit: "m",
    units: ["m", "ft"],
    range: [-430, 5200],
  },
];

const APPLIANCE_TYPES = [
  ["combiOven", "Combi oven"],
  ["steamer", "Steamer"],
  ["coffee", "Coffee machine"],
  ["ice", "Ice maker"],
  ["dishwasher", "Dishwasher"],
  ["dispenser", "Water dispenser"],
  ["other", "Other"],
] as const;

export const applianceSpecs: readonly FieldSpec[] = [
  { kind: "text", field: "name", label: "Appliance", required: true },
  { kind: "choice", field: "type", label: "Kind", choices: APPLIANCE_TYPES },
  {
    kind: "number",
    field: "minimumPressureKPaGauge",
    label: "Minimum pressure on its label (may stay blank)",
    baseUnit: "kPa",
    units: PRESSURE,
    range: [0, 1000],
  },
];

export const limitSpecs: readonly FieldSpec[] = [
  {
    kind: "choice",
    field: "quantity",
    label: "Limit of",
    choices: [
      ["tds", "Dissolved solids"],
      ["hardness", "Hardness, mg/L as CaCO₃"],
      ["alkalinity", "Alkalinity, mg/L as CaCO₃"],
      ["chloride", "Chloride, mg/L"],
      ["chlorine", "Chlorine, mg/L"],
      ["silica", "Silica, mg/L"],
      ["pH", "pH"],
    ],
  },
  { kind: "number", field: "low", label: "At least", baseUnit: "mg/L", units: ["mg/L"], range: [0, 5000] },
  { kind: "number", field: "high", label: "At most", baseUnit: "mg/L", units: ["mg/L"], range: [0, 5000] },
  { kind: "choice", field: "scale", label: "Scale, for dissolved solids", choices: SCALES },
  { kind: "text", field: "source", label: "Where the limit stands" },
];

export const pointSpecs: readonly FieldSpec[] = [
  { kind: "text", field: "name", label: "Place", required: true },
  { kind: "text", field: "where", label: "Where it hangs" },
  { kind: "flag", field: "bypassFitted", label: "Has a bypass" },
];

export const unitSpecs: readonly FieldSpec[] = [
  { kind: "text", field: "name", label: "Unit", required: true },
  { kind: "text", field: "serial", label: "Serial number" },
  {
    kind: "number",
    field: "ratedPermeateLPerH",
    label: "Nameplate: permeate",
    baseUnit: "L/h",
    units: ["gpd", "L/h", "mL/min"],
    range: [0.1, 1000],
  },
  {
    kind: "number",
    field: "ratedRejectLPerH",
    label: "Nameplate: drain flow",
    baseUnit: "L/h",
    units: ["L/h", "gpd", "mL/min"],
    range: [0.1, 3000],
  },
  {
    kind: "number",
    field: "ratedRejectionPercent",
    label: "Nameplate: rejection, %",
    baseUnit: "",
    units: [""],
    range: [20, 99.99],
  },
  {
    kind: "number",
    field: "testPressureKPaGauge",
    label: "at test pressure",
    baseUnit: "kPa",
    units: PRESSURE,
    range: [50, 3000],
  },
  {
    kind: "number",
    field: "testTemperatureC",
    label: "at temperature",
    baseUnit: "°C",
    units: ["°C", "°F"],
    range: [1, 60],
  },
  {
    kind: "number",
    field: "testFeedMgPerL",
    label: "with feed of NaCl",
    baseUnit: "mg/L",
    units: ["mg/L"],
    range: [10, 10000],
  },
  {
    kind: "number",
    field: "tankL",
    label: "Tank volume",
    baseUnit: "L",
    units: ["gal", "L"],
    range: [0.5, 1000],
  },
  {
    kind: "number",
    field: "tankPlatePressureKPaGauge",
    label: "Tank plate: highest pressure",
    baseUnit: "kPa",
    units: PRESSURE,
    range: [100, 2000],
  },
  {
    kind: "number",
    field: "restrictorLPerH",
    label: "Restrictor: drain flow",
    baseUnit: "L/h",
    units: ["mL/min", "L/h", "gpd"],
    range: [0.1, 3000],
  },
  {
    kind: "number",
    field: "restrictorAtKPaGauge",
    label: "at pressure",
    baseUnit: "kPa",
    units: PRESSURE,
    range: [50, 3000],
  },
  { kind: "date", field: "fittedOn", label: "Fitted on" },
  {
    kind: "set",
    field: "portsAbsent",
    label: "Not there on this unit (never asked again)",
    choices: [
      ["beforeFilter", "Gauge before the filters"],
      ["afterFilter", "Gauge after the filters"],
      ["drain", "Drain line within reach"],
      ["permeateToWaste", "Sample tap before the tank"],
      ["tank", "Tank gauge"],
      ["meter", "Water meter"],
    ],
  },
  { kind: "flag", field: "remineraliser", label: "Has a remineraliser after the tank" },
  { kind: "flag", field: "blendValve", label: "Has a blend valve" },
];

export const PART_ROLES = [
  ["sediment", "Sediment cartridge"],
  ["carbon", "Carbon cartridge"],
  ["scaleInhibitor", "Scale inhibitor"],
  ["element", "Membrane element"],
  ["postCarbon", "Post-filter"],
  ["remineraliser", "Remineraliser"],
  ["uvLamp", "UV lamp"],
  ["tank", "Tank"],
  ["restrictor", "Flow restrictor"],
  ["checkValve", "Check valve"],
  ["shutOff", "Shut-off valve"],
] as const;

export const partSpecs: readonly FieldSpec[] = [
  { kind: "choice", field: "role", label: "Part", choices: PART_ROLES },
  { kind: "date", field: "fittedOn", label: "Fitted on" },
  {
    kind: "number",
    field: "ratedLitres",
    label: "Rated volume",
    baseUnit: "L",
    units: ["m³", "gal", "L"],
    range: [10, 1e7],
  },
  {
    kind: "number",
    field: "ratedChlorineMgPerL",
    label: "rated at chlorine",
    baseUnit: "mg/L",
    units: ["mg/L"],
    range: [0.1, 10],
  },
  {
    kind: "number",
    field: "intervalMonths",
    label: "Change every, months",
    baseUnit: "",
    units: [""],
    range: [1, 120],
  },
  { kind: "text", field: "lot", label: "Lot" },
  { kind: "text", field: "serial", label: "Serial number" },
];

export const instrumentSpecs: readonly FieldSpec[] = [
  { kind: "text", field: "name", label: "Instrument", required: true },
  {
    kind: "choice",
    field: "kind",
    label: "Reads",
    choices: [
      ["tds", "Dissolved solids"],
      ["pressure", "Pressure"],
      ["temperature", "Temperature"],
      ["flow", "Volume and time"],
      ["chlorine", "Chlorine"],
      ["hardness", "Hardness"],
      ["kit", "Chloride, silica"],
      ["pH", "pH"],
      ["meter", "Water meter"],
    ],
  },
  {
    kind: "choice",
    field: "unit",
    label: "Unit",
    choices: ["ppm", "µS/cm", "psi", "bar", "kPa", "°C", "°F", "mg/L", "gpg", "m³", "s"].map(
      (unit) => [unit, unit] as const,
    ),
  },
  { kind: "choice", field: "scale", label: "Scale, for dissolved solids", choices: SCALES },
  {
    kind: "number",
    field: "accuracyPercentOfReading",
    label: "± % of reading",
    baseUnit: "",
    units: [""],
    range: [0, 50],
  },
  {
    kind: "number",
    field: "accuracyPercentOfFullScale",
    label: "± % of full scale",
    baseUnit: "",
    units: [""],
    range: [0, 50],
  },
  { kind: "number", field: "fullScale", label: "Full scale", baseUnit: "", units: [""], range: [0, 1e6] },
  {
    kind: "number",
    field: "resolution",
    label: "Smallest step shown",
    baseUnit: "",
    units: [""],
    range: [0, 1000],
  },
  { kind: "date", field: "lastCheckedOn", label: "Last checked against a standard" },
  { kind: "flag", field: "usual", label: "Taken up first" },
];

export const settingsSpecs: readonly FieldSpec[] = [
  { kind: "text", field: "technician", label: "Your name" },
  {
    kind: "choice",
    field: "decimalSign",
    label: "Decimal sign",
    choices: [
      [".", "point"],
      [",", "comma"],
    ],
  },
  { kind: "flag", field: "leftHand", label: "Left hand" },
  {
    kind: "number",
    field: "filterDropLimitKPa",
    label: "Office rule: pre-filter drop up to",
    baseUnit: "kPa",
    units: PRESSURE,
    range: [1, 300],
  },
  {
    kind: "number",
    field: "flowRatioLimit",
    label: "Office rule: membrane flow at least (1 = as new)",
    baseUnit: "",
    units: [""],
    range: [0.2, 1],
  },
  {
    kind: "number",
    field: "saltRatioLimit",
    label: "Office rule: salt passage up to (1 = as new)",
    baseUnit: "",
    units: [""],
    range: [1, 10],
  },
  {
    kind: "number",
    field: "shutOffRatio",
    label: "Shut-off closes at this share of feed pressure",
    baseUnit: "",
    units: [""],
    range: [0.4, 0.9],
  },
];
