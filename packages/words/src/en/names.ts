import type { Messages } from "../messages.ts";

export const phases: Messages["phases"] = { asFound: "As found", asLeft: "As left" };

export const visitKinds: Messages["visitKinds"] = {
  annual: "Annual visit",
  filterOnly: "Filters only",
  callOut: "Call-out",
  quality: "Taste or quality complaint",
  commissioning: "Commissioning",
  survey: "Survey before an installation",
  returnVisit: "Return visit",
  shutDown: "Shut-down of a season",
  restart: "Restart of a season",
  removal: "Removal",
  noAccess: "No access",
};

export const slots: Messages["slots"] = {
  feedTds: "Feed TDS",
  feedTemperature: "Feed temperature",
  chlorineBefore: "Chlorine in feed",
  chlorineAfter: "Chlorine after carbon",
  staticPressure: "Standing pressure",
  beforeFilterPressure: "Before filters",
  afterFilterPressure: "After filters",
  permeateFlow: "Permeate flow",
  drainFlow: "Drain flow",
  permeateTds: "TDS to waste",
  deliveredTds: "Delivered TDS",
  tankFullPressure: "Tank gauge",
  drawnVolume: "Litres drawn",
  tankAfterPressure: "Tank after draw",
  airCharge: "Air charge",
  waterMeter: "Water meter",
  hardness: "Feed hardness",
  firstDrawTds: "First draw TDS",
  standardSolution: "Standard solution",
  drainTds: "Drain TDS",
  drainFlowFeedClosed: "Drain, feed closed",
  drainFlowTankFull: "Drain, tank full",
  postFilterPressure: "After post-filter",
  deliveredFlow: "Delivered flow",
  chlorineFreeBefore: "Free chlorine in feed",
  chlorineFreeAfter: "Free chlorine, carbon",
  deliveredChlorine: "Delivered chlorine",
  deliveredHardness: "Delivered hardness",
  deliveredAlkalinity: "Delivered alkalinity",
  deliveredChloride: "Delivered chloride",
  deliveredSilica: "Delivered silica",
  deliveredPh: "Delivered pH",
  feedAlkalinity: "Feed alkalinity",
  feedChloride: "Feed chloride",
  feedSilica: "Feed silica",
  feedPh: "Feed pH",
  chloramine: "Chloramine in feed",
  peakPressure: "Pressure at the peak",
  nightPressure: "Pressure at night",
  drainGap: "Drain air gap",
  drainHeight: "Drain height",
  hourCounter: "Hour counter",
};

export const ports: Messages["ports"] = {
  feed: "Feed tap",
  beforeFilter: "Gauge before filters",
  afterFilter: "Gauge after filters",
  drain: "Drain line",
  permeateToWaste: "Permeate sample",
  tank: "Tank gauge",
  delivered: "Delivery tap",
  meter: "Water meter",
  hourMeter: "Hour counter",
  bottle: "Bottle of standard",
};

export const roles: Messages["roles"] = {
  sediment: "Sediment cartridge",
  carbon: "Carbon cartridge",
  scaleInhibitor: "Scale inhibitor",
  element: "Membrane element",
  postCarbon: "Post-carbon",
  remineraliser: "Remineraliser",
  softener: "Softener",
  uvLamp: "UV lamp",
  tank: "Tank",
  restrictor: "Flow restrictor",
  checkValve: "Check valve",
  shutOff: "Shut-off valve",
};

export const appliances: Messages["appliances"] = {
  combiOven: "Combi oven",
  steamer: "Steamer",
  coffee: "Coffee machine",
  ice: "Ice maker",
  dishwasher: "Dishwasher",
  dispenser: "Water dispenser",
  other: "Appliance",
};

export const verdicts: Messages["verdicts"] = {
  within: "within",
  outside: "outside",
  tooClose: "too close to say",
  cannotTell: "cannot tell",
  information: "for information",
};

const QUANTITIES: Readonly<Record<string, string>> = {
  tds: "dissolved solids",
  hardness: "hardness",
  alkalinity: "alkalinity",
  chloride: "chloride",
  chlorine: "chlorine",
  silica: "silica",
  pH: "pH",
  tds442: "dissolved solids",
  calciumHardness: "calcium hardness",
  calcium: "calcium",
  sulfate: "sulfate",
  sodium: "sodium",
  freeCo2: "free CO₂",
  conductivity25: "conductivity",
  totalChlorine: "chlorine",
  calciteIndexHot: "saturation when hot",
};

export const quantity = (id: string): string => QUANTITIES[id] ?? id;

const SOURCES: Readonly<Record<string, string>> = {
  commonPractice: "common practice, no published source",
  officeRule: "office rule",
  boosterSwitch: "booster's switch",
  applianceLabel: "appliance label",
  elementLabel: "element label",
  carbonRating: "rating of the carbon",
  instrument: "accuracy on record for the meter",
};

export const source = (id: string): string => SOURCES[id] ?? id;

const RULES: Readonly<Record<string, string>> = {
  "guard-band-U": "guard band: clear of the limit by the expanded uncertainty (k = 2)",
  "at-most-by-conductivity": "not measured; the water conducts too little to hold so much of it",
  "not-detected": "not detected at a step not above the limit",
  "samples-95":
    "completed from the feed and the passage: fewer than 1 in 20 of the possible waters answer otherwise",
};

export const rule = (id: string): string => RULES[id] ?? id;

const UNITS: Readonly<Record<string, string>> = { "mg/L CaCO3": "mg/L as CaCO₃", "uS/cm": "µS/cm" };

export const unit = (id: string): string => UNITS[id] ?? id;

const FIELDS: Readonly<Record<string, string>> = {
  beforeFilterPressure: "pressure before the filters",
  afterFilterPressure: "pressure after the filters",
  tankFullPressure: "the tank gauge",
  tankAfterPressure: "the tank gauge after a draw",
  permeateTds: "TDS to waste",
  feedTds: "feed TDS",
  deliveredTds: "delivered TDS",
  chlorineBefore: "chlorine in the feed",
  deliveredHardness: "hardness of the delivered water",
  deliveredAlkalinity: "alkalinity of the delivered water",
  deliveredChloride: "chloride of the delivered water",
  deliveredSilica: "silica of the delivered water",
  deliveredPh: "pH of the delivered water",
  "unit.tankL": "the tank's litres",
  "unit.ratedPermeateLPerH": "the nameplate's permeate flow",
  "unit.ratedRejectionPercent": "the nameplate's rejection",
  "unit.testPressureKPaGauge": "the nameplate's test pressure",
  "unit.testTemperatureC": "the nameplate's test temperature",
  "unit.testFeedMgPerL": "the nameplate's test feed",
  "appliance.minimumPressure": "the appliance's minimum pressure",
  "unit.shutOffRatio": "the shut-off ratio",
  "unit.restrictorKind": "the kind of restrictor",
  "unit.restrictorLPerH": "the restrictor's flow",
  "unit.restrictorAtKPaGauge": "the pressure of the restrictor's flow",
  "unit.restrictorAtC": "the water's warmth at the restrictor's measurement",
  "unit.restrictorLaw": "whether the measured restrictor is a fine tube or a hole",
  "unit.restrictorBoreMm": "the restrictor's bore",
  "unit.restrictorLengthM": "the capillary's length",
  "unit.feedTubeLengthM": "the length of the line through the filters",
  "unit.permeateTubeLengthM": "the length of the line to the tank",
  "unit.drainTubeLengthM": "the length of the drain line",
  "unit.outletTubeLengthM": "the length of the line from the tank",
  "part.carbon": "a carbon cartridge on record",
  "part.ratedChlorine": "the chlorine at which the carbon is rated",
  "part.ratedLitres": "the carbon's rated litres",
  "part.meterAtFitting": "the meter reading when the carbon was new",
  "bypass.until": "the day the permission ends",
  "appliance.litresPerDay": "what an appliance takes on a busy day",
  "appliance.hottestC": "the hottest water of the appliance",
  "appliance.steelGrade": "the steel grade of the appliance",
  steelTable: "a published chloride limit for this steel so hot",
  "appliance.copperOrBrass": "the answer on copper or brass",
};

export const missingName = (id: string): string =>
  FIELDS[id] ?? (id in slots ? lowerFirst(slots[id as keyof typeof slots]) : quantity(id));

const lowerFirst = (text: string): string =>
  /^[A-Z]{2}/.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);

/** "a, b and c". */
const FITTINGS: Readonly<Record<string, string>> = {
  feed: "a sample tap with gauge before the unit",
  beforeFilter: "a tee and a gauge before the filters",
  afterFilter: "a tee and a gauge after the filters",
  drain: "a drain line that can be measured",
  permeateToWaste: "a sample valve before the tank",
  tank: "a tee and a gauge at the tank",
  delivered: "a sample tap at the delivery",
  meter: "a water meter",
  hourMeter: "an hour counter",
};

/** What has to be fitted so that something can be read at a port. */
export const fitting = (port: string): string => FITTINGS[port] ?? port;

export function listed(names: readonly string[]): string {
  const unique = [...new Set(names)];
  if (unique.length < 2) return unique.join("");
  return `${unique.slice(0, -1).join(", ")} and ${unique.at(-1)}`;
}

/** "cannot tell, because feed TDS and drain flow are missing". */
export const missing: Messages["missing"] = ({ missing: ids }) =>
  `cannot tell, because ${listed(ids.slice(0, 3).map(missingName))} ${ids.length > 1 ? "are" : "is"} missing`;
