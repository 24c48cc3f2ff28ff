import type { WaterBandPoint, WaterWords } from "../water-words.ts";
import { lowerFirst } from "./names.ts";

const NAMES: Readonly<Record<string, string>> = {
  Ca: "Calcio",
  Mg: "Magnesio",
  Na: "Sodio",
  K: "Potasio",
  Cl: "Cloruro",
  SO4: "Sulfato",
  NO3: "Nitrato",
  F: "Fluoruro",
  SiO2: "Sílice",
  Alk: "Alcalinidad",
  pH: "pH",
  temperatureC: "Temperatura",
  alkalinityMgPerLCaCO3: "Alcalinidad",
  hardnessMgPerLCaCO3: "Dureza",
  ec25UsPerCm: "Conductividad",
  tdsMgPerL: "Sólidos disueltos",
  hardness: "Dureza",
  calciumHardness: "Dureza cálcica",
  calcium: "Calcio",
  alkalinity: "Alcalinidad",
  chloride: "Cloruro",
  sulfate: "Sulfato",
  sodium: "Sodio",
  silica: "Sílice",
  freeCo2: "CO₂ libre",
  conductivity25: "Conductividad",
  calciteIndexHot: "Saturación en caliente",
  tds442: "Sólidos disueltos",
  totalChlorine: "Cloro, libre y combinado",
  ec25: "Conductividad",
  tds: "Sólidos disueltos",
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
  [5, "Casi no forma sarro"],
  [40, "Forma poco sarro"],
  [100, "Forma sarro ligero"],
  [200, "Forma sarro"],
  [Number.POSITIVE_INFINITY, "Forma mucho sarro"],
];

function heated({ temperatureC, calciteIndex, scaleMgPerL }: WaterBandPoint): string {
  const [low, middle, high] = scaleMgPerL;
  if (high < 1)
    return calciteIndex[1] < -0.1
      ? `No forma sarro a ${temperatureC} °C: disuelve la cal.`
      : `No forma sarro a ${temperatureC} °C.`;
  const range = short(low) === short(high) ? short(high) : `${short(low)}–${short(high)}`;
  if (low < 1 && high > 40)
    return `Puede formar sarro a ${temperatureC} °C: ${range} mg por litro calentado.`;
  const word = HEAVINESS.find(([upTo]) => middle <= upTo)![1];
  return `${word} a ${temperatureC} °C: ${range} mg por litro calentado.`;
}

const SUSPICIONS: Readonly<Record<string, string>> = {
  "calcium-given-as-CaCO3": "¿Está el calcio dado como CaCO₃, no como ion?",
  "magnesium-given-as-CaCO3": "¿Está el magnesio dado como CaCO₃, no como ion?",
  "hardness-ions-in-grains-per-gallon": "¿Están calcio y magnesio en granos por galón?",
  "alkalinity-given-as-bicarbonate": "¿Está la alcalinidad dada como bicarbonato, no como CaCO₃?",
  "alkalinity-in-grains-per-gallon": "¿Está la alcalinidad en granos por galón?",
  "nitrate-given-as-nitrogen": "¿Está el nitrato dado como nitrógeno?",
  "hardness-in-grains-per-gallon": "¿Está la dureza en granos por galón?",
  "hardness-is-of-another-water": "La dureza no concuerda con calcio y magnesio: ¿otra muestra?",
  "conductivity-in-another-unit": "¿Está la conductividad en mS/cm?",
  "dissolved-solids-do-not-fit-conductivity": "Los sólidos disueltos no concuerdan con la conductividad.",
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
        ? `al menos ${low}`
        : `hasta ${high}`;
  return `${said} ${text}`.trim();
}

export const water: WaterWords = {
  title: "El agua aquí",
  measured: "leído o informado",
  completed: "completado, no leído",
  scales: "deposita sarro",
  dissolves: "disuelve la cal",
  curve: "Saturación de cal según la temperatura",
  modelSpread:
    "Las bases de datos difieren en 0.1 de saturación. Un hervidor que pierde CO₂ deposita hasta 1.7 veces más.",
  guidance: "Solo orientación: mandan la etiqueta y el manual del aparato.",
  unknown: "Lea sólidos disueltos o dureza, o agregue un análisis: entonces se puede describir el agua.",
  name: nameOf,
  unit: (id) => UNITS[id] ?? "mg/L",
  range: (low, middle, high, measured) =>
    measured || short(low) === short(high) ? short(middle) : `${short(low)}–${short(high)}`,
  heated,
  mostTelling: (reading) => `Lo que más diría es una prueba de ${lowerFirst(nameOf(reading))}.`,
  limit: (limit) =>
    `${nameOf(limit.property)} ${bounds(limit)} (${[limit.appliance, limit.source].filter(Boolean).join("; ")})`,
  answer: (answer) =>
    ({
      within: "dentro",
      outside: "fuera",
      "too-close-to-say": "demasiado justo para decir",
      "cannot-tell": "no se puede saber",
    })[answer],
  suspicion: (id) => SUSPICIONS[id] ?? id,
  verdict: (verdict) =>
    ({ agrees: "concuerda", doubtful: "dudoso", "cannot-tell": "no se puede saber" })[verdict],
};
