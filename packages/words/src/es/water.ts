import { type HeatedPhrases, heatedWater } from "../heated-water.ts";
import { boundsText, conductivityText, readOrRange, waterUnit } from "../water-amounts.ts";
import type { WaterWords } from "../water-words.ts";
import { lowerFirst, source } from "./names.ts";
import { DECIMAL_SIGN } from "./number.ts";

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
  chargeBalance: "Balance de cargas",
  ec25: "Conductividad",
  tds: "Sólidos disueltos",
};
const HEATED: HeatedPhrases = {
  decimalSign: DECIMAL_SIGN,
  dissolves: (temperatureC) => `No forma sarro a ${temperatureC} °C: disuelve la cal.`,
  doesNotScale: (temperatureC) => `No forma sarro a ${temperatureC} °C.`,
  mayScale: (temperatureC, range) =>
    `Puede formar sarro a ${temperatureC} °C: ${range} mg por litro calentado.`,
  grades: [
    "Casi no forma sarro",
    "Forma poco sarro",
    "Forma sarro ligero",
    "Forma sarro",
    "Forma mucho sarro",
  ],
  scales: (grade, temperatureC, range) => `${grade} a ${temperatureC} °C: ${range} mg por litro calentado.`,
};

const SUSPICIONS: Readonly<Record<string, string>> = {
  "calcium-given-as-CaCO3": "¿Está el calcio dado como CaCO₃, no como ion?",
  "magnesium-given-as-CaCO3": "¿Está el magnesio dado como CaCO₃, no como ion?",
  "hardness-ions-given-as-CaCO3": "¿Están el calcio y el magnesio dados como CaCO₃ y no como iones?",
  "hardness-ions-in-grains-per-gallon": "¿Están calcio y magnesio en granos por galón?",
  "alkalinity-given-as-bicarbonate": "¿Está la alcalinidad dada como bicarbonato, no como CaCO₃?",
  "alkalinity-in-grains-per-gallon": "¿Está la alcalinidad en granos por galón?",
  "nitrate-given-as-nitrogen": "¿Está el nitrato dado como nitrógeno?",
  "hardness-in-grains-per-gallon": "¿Está la dureza en granos por galón?",
  "hardness-is-of-another-water": "La dureza no concuerda con calcio y magnesio: ¿otra muestra?",
  "conductivity-in-another-unit": "¿Está la conductividad en mS/cm?",
  "dissolved-solids-do-not-fit-conductivity": "Los sólidos disueltos no concuerdan con la conductividad.",
};

const INDICES: Readonly<Record<string, string>> = {
  langelier: "Langelier, termodinámico",
  langelierSimplified: "Langelier, simplificado (fórmula)",
  ryznar: "Ryznar (simplificado)",
  puckorius: "Puckorius (simplificado)",
  larsonSkold: "Larson–Skold",
  aggressive: "Índice de agresividad",
};

const nameOf = (id: string) => NAMES[id] ?? id;

const BOUNDS = { atLeast: "al menos", upTo: "hasta", decimalSign: DECIMAL_SIGN } as const;

export const water: WaterWords = {
  title: "El agua aquí",
  measured: "leído o informado",
  completed: "completado, no leído",
  scales: "deposita sarro",
  dissolves: "disuelve la cal",
  curve: "Saturación de cal según la temperatura",
  modelSpread:
    "Las bases de datos difieren en 0,1 de saturación. Un hervidor que pierde CO₂ deposita hasta 1,7 veces más.",
  suits: "¿Conviene a los aparatos?",
  guidance: "Solo orientación: mandan la etiqueta y el manual del aparato.",
  unknown: "Lea sólidos disueltos o dureza, o agregue un análisis: entonces se puede describir el agua.",
  name: nameOf,
  unit: waterUnit,
  range: readOrRange(DECIMAL_SIGN),
  heated: (point) => heatedWater(HEATED, point),
  mostTelling: (reading) => `Lo que más diría es una prueba de ${lowerFirst(nameOf(reading))}.`,
  index: (id) => INDICES[id] ?? id,
  history: "Historial del agua de entrada",
  stepRule: "Un salto: más de 3 incertidumbres típicas y 10 % respecto de las lecturas anteriores.",
  conductivity: conductivityText,
  historyTold: (visits, steps) =>
    [
      `Conductividad del agua de entrada en ${visits} visitas.`,
      ...steps.map(
        ({ day, before, after }) =>
          `Salto hacia ${after > before ? "arriba" : "abajo"} el ${day}: de ${conductivityText(before)} a ${conductivityText(after)}.`,
      ),
      ...(steps.length === 0 ? ["Sin saltos."] : []),
    ].join(" "),
  limit: (limit) =>
    `${nameOf(limit.property)} ${boundsText(limit, BOUNDS)} (${[limit.appliance, limit.source && source(limit.source)].filter(Boolean).join("; ")})`,
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
