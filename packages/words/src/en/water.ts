import { type HeatedPhrases, heatedWater } from "../heated-water.ts";
import { boundsText, conductivityText, readOrRange, waterUnit } from "../water-amounts.ts";
import type { WaterWords } from "../water-words.ts";

const NAMES: Readonly<Record<string, string>> = {
  Ca: "Calcium",
  Mg: "Magnesium",
  Na: "Sodium",
  K: "Potassium",
  Cl: "Chloride",
  SO4: "Sulfate",
  NO3: "Nitrate",
  F: "Fluoride",
  SiO2: "Silica",
  Alk: "Alkalinity",
  pH: "pH",
  temperatureC: "Temperature",
  alkalinityMgPerLCaCO3: "Alkalinity",
  hardnessMgPerLCaCO3: "Hardness",
  ec25UsPerCm: "Conductivity",
  tdsMgPerL: "Dissolved solids",
  hardness: "Hardness",
  calciumHardness: "Calcium hardness",
  calcium: "Calcium",
  alkalinity: "Alkalinity",
  chloride: "Chloride",
  sulfate: "Sulfate",
  sodium: "Sodium",
  silica: "Silica",
  freeCo2: "Free CO₂",
  conductivity25: "Conductivity",
  calciteIndexHot: "Saturation when hot",
  tds442: "Dissolved solids",
  totalChlorine: "Chlorine, free and combined",
  chargeBalance: "Charge balance",
  ec25: "Conductivity",
  tds: "Dissolved solids",
};
const HEATED: HeatedPhrases = {
  decimalSign: ".",
  dissolves: (temperatureC) => `Does not scale at ${temperatureC} °C: it dissolves lime.`,
  doesNotScale: (temperatureC) => `Does not scale at ${temperatureC} °C.`,
  mayScale: (temperatureC, range) => `May scale at ${temperatureC} °C: ${range} mg per litre heated.`,
  grades: ["Hardly scales", "Scales a little", "Scales lightly", "Scales", "Scales heavily"],
  scales: (grade, temperatureC, range) => `${grade} at ${temperatureC} °C: ${range} mg per litre heated.`,
};

const SUSPICIONS: Readonly<Record<string, string>> = {
  "calcium-given-as-CaCO3": "Is calcium given as CaCO₃, not as the ion?",
  "magnesium-given-as-CaCO3": "Is magnesium given as CaCO₃, not as the ion?",
  "hardness-ions-given-as-CaCO3": "Are calcium and magnesium given as CaCO₃, not as the ions?",
  "hardness-ions-in-grains-per-gallon": "Are calcium and magnesium in grains per gallon?",
  "alkalinity-given-as-bicarbonate": "Is alkalinity given as bicarbonate, not as CaCO₃?",
  "alkalinity-in-grains-per-gallon": "Is alkalinity in grains per gallon?",
  "nitrate-given-as-nitrogen": "Is nitrate given as nitrogen?",
  "hardness-in-grains-per-gallon": "Is hardness in grains per gallon?",
  "hardness-is-of-another-water": "Hardness does not fit calcium and magnesium: another sample?",
  "conductivity-in-another-unit": "Is conductivity in mS/cm?",
  "dissolved-solids-do-not-fit-conductivity": "Dissolved solids do not fit the conductivity.",
};

const INDICES: Readonly<Record<string, string>> = {
  langelier: "Langelier, thermodynamic",
  langelierSimplified: "Langelier, simplified (formula)",
  ryznar: "Ryznar (simplified)",
  puckorius: "Puckorius (simplified)",
  larsonSkold: "Larson–Skold",
  aggressive: "Aggressive index",
};

const nameOf = (id: string) => NAMES[id] ?? id;

const BOUNDS = { atLeast: "at least", upTo: "up to", decimalSign: "." } as const;

export const water: WaterWords = {
  title: "Water here",
  measured: "read or reported",
  completed: "completed, not read",
  scales: "lays scale down",
  dissolves: "dissolves lime",
  curve: "Saturation of lime against temperature",
  modelSpread:
    "Databases differ by 0.1 in saturation. A kettle that loses CO₂ lays down up to 1.7 times as much.",
  suits: "Does it suit the appliances?",
  guidance: "Guidance only: the appliance's label and manual rule.",
  unknown: "Read dissolved solids or hardness, or add an analysis: then the water can be told.",
  name: nameOf,
  unit: waterUnit,
  range: readOrRange("."),
  heated: (point) => heatedWater(HEATED, point),
  mostTelling: (reading) => `A test of ${nameOf(reading).toLowerCase().replace("ph", "pH")} would tell most.`,
  index: (id) => INDICES[id] ?? id,
  history: "History of the feed",
  stepRule: "A step: more than 3 standard uncertainties and 10 % from the readings before it.",
  conductivity: conductivityText,
  historyTold: (visits, steps) =>
    [
      `Conductivity of the feed at ${visits} visits.`,
      ...steps.map(
        ({ day, before, after }) =>
          `Step ${after > before ? "up" : "down"} by ${day}: ${conductivityText(before)} to ${conductivityText(after)}.`,
      ),
      ...(steps.length === 0 ? ["No step."] : []),
    ].join(" "),
  limit: (limit) =>
    `${nameOf(limit.property)} ${boundsText(limit, BOUNDS)} (${[limit.appliance, limit.source].filter(Boolean).join("; ")})`,
  answer: (answer) =>
    ({
      within: "within",
      outside: "outside",
      "too-close-to-say": "too close to say",
      "cannot-tell": "cannot tell",
    })[answer],
  suspicion: (id) => SUSPICIONS[id] ?? id,
  verdict: (verdict) => ({ agrees: "agrees", doubtful: "doubtful", "cannot-tell": "cannot tell" })[verdict],
};
