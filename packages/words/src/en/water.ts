import type { WaterBandPoint, WaterWords } from "../water-words.ts";

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
  ec25: "Conductivity",
  tds: "Dissolved solids",
};
const UNITS: Readonly<Record<string, string>> = {
  Alk: "mg/L CaCO₃",
  alkalinityMgPerLCaCO3: "mg/L CaCO₃",
  hardnessMgPerLCaCO3: "mg/L CaCO₃",
  hardness: "mg/L CaCO₃",
  ec25UsPerCm: "µS/cm",
  ec25: "µS/cm",
  temperatureC: "°C",
  pH: "",
};

/** Two figures, and no more than one decimal. */
function short(value: number): string {
  if (value >= 100) return String(Number(value.toPrecision(2)));
  if (value >= 10) return value.toFixed(0);
  return value >= 1 ? String(Number(value.toFixed(1))) : String(Number(value.toFixed(2)));
}

/** How heavy scale is, by mg/L laid down at the middle. Common practice, no source. */
const HEAVINESS: readonly (readonly [upTo: number, word: string])[] = [
  [5, "hardly scales"],
  [40, "scales a little"],
  [100, "scales lightly"],
  [200, "scales"],
  [Number.POSITIVE_INFINITY, "scales heavily"],
];

function heated({ temperatureC, calciteIndex, scaleMgPerL }: WaterBandPoint): string {
  const [low, middle, high] = scaleMgPerL;
  if (high < 1)
    return calciteIndex[1] < -0.1
      ? `Does not scale at ${temperatureC} °C: it dissolves lime.`
      : `Does not scale at ${temperatureC} °C.`;
  const range = short(low) === short(high) ? short(high) : `${short(low)}–${short(high)}`;
  if (low < 1 && high > 40) return `May scale at ${temperatureC} °C: ${range} mg per litre heated.`;
  const word = HEAVINESS.find(([upTo]) => middle <= upTo)![1];
  return `${word[0]!.toUpperCase()}${word.slice(1)} at ${temperatureC} °C: ${range} mg per litre heated.`;
}

const SUSPICIONS: Readonly<Record<string, string>> = {
  "calcium-given-as-CaCO3": "Is calcium given as CaCO₃, not as the ion?",
  "magnesium-given-as-CaCO3": "Is magnesium given as CaCO₃, not as the ion?",
  "hardness-ions-in-grains-per-gallon": "Are calcium and magnesium in grains per gallon?",
  "alkalinity-given-as-bicarbonate": "Is alkalinity given as bicarbonate, not as CaCO₃?",
  "alkalinity-in-grains-per-gallon": "Is alkalinity in grains per gallon?",
  "nitrate-given-as-nitrogen": "Is nitrate given as nitrogen?",
  "hardness-in-grains-per-gallon": "Is hardness in grains per gallon?",
  "hardness-is-of-another-water": "Hardness does not fit calcium and magnesium: another sample?",
  "conductivity-in-another-unit": "Is conductivity in mS/cm?",
  "dissolved-solids-do-not-fit-conductivity": "Dissolved solids do not fit the conductivity.",
};

const nameOf = (id: string) => NAMES[id] ?? id;

function bounds({
  low,
  high,
  unit,
}: {
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
}) {
  const text = unit.replace("CaCO3", "CaCO₃").replace(/^pH$/, "");
  const said =
    low !== undefined && high !== undefined
      ? `${low}–${high}`
      : low !== undefined
        ? `at least ${low}`
        : `up to ${high}`;
  return `${said} ${text}`.trim();
}

export const water: WaterWords = {
  title: "Water here",
  measured: "read or reported",
  completed: "completed, not read",
  scales: "lays scale down",
  dissolves: "dissolves lime",
  curve: "Saturation of lime against temperature",
  modelSpread:
    "Databases differ by 0.1 in saturation. A kettle that loses CO₂ lays down up to 1.7 times as much.",
  guidance: "Guidance only: the appliance's label and manual rule.",
  unknown: "Read dissolved solids or hardness, or add an analysis: then the water can be told.",
  name: nameOf,
  unit: (id) => UNITS[id] ?? "mg/L",
  range: (low, middle, high, measured) =>
    measured || short(low) === short(high) ? short(middle) : `${short(low)}–${short(high)}`,
  heated,
  mostTelling: (reading) => `A test of ${nameOf(reading).toLowerCase().replace("ph", "pH")} would tell most.`,
  limit: (limit) =>
    `${nameOf(limit.property)} ${bounds(limit)} (${[limit.appliance, limit.source].filter(Boolean).join("; ")})`,
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
