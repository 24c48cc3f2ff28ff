import type { Packs } from "../words/packs.ts";

export const waterPageEs: Packs["first"]["water"] = {
  open: "El agua de aquí",
  openHint: "qué es y qué hace en caliente",
  site: "Sitio",
  addAnalysis: "Agregar un análisis",
  analysisHint: "frasco o informe",
  fileIn: "Informe de un archivo",
  fileHint:
    "Una tabla (CSV) de un laboratorio o servicio de agua: una línea por valor con quantity, value o mean, low, high y unit. Frasco, lugar y fecha pueden tener columnas. Nada se guarda antes de que usted lo haya mirado.",
  otherFile: "Otro archivo",
  filePreview: (reports, refusedRows) =>
    `${reports} ${reports === 1 ? "informe" : "informes"} por recibir${refusedRows > 0 ? `, ${refusedRows} ${refusedRows === 1 ? "fila rechazada" : "filas rechazadas"}` : ""}.`,
  fileTaken: (n) => `${n} ${n === 1 ? "informe recibido" : "informes recibidos"}. Deshacer lo devuelve todo.`,
  lineOf: (mean, low, high, unit) => {
    const range = low || high ? `${low}–${high}` : "";
    return `${mean}${mean && range ? ` (${range})` : range} ${unit}`.trim();
  },
  analyses: "Análisis e informes anuales",
  laboratory: "Laboratorio, un frasco",
  utility: "Servicio de agua, informe anual",
  origin: "De",
  sampledOn: "Tomada el",
  bottleCode: "Código del frasco",
  samplingPlace: "Punto de muestreo",
  mean: "valor o promedio",
  low: "mínimo",
  high: "máximo",
  suits: "¿Sirve?",
  feed: "entrada",
  product: "producto",
  blendOf: (percent) => `${percent} % de entrada en el producto`,
  blend: "Válvula de mezcla",
  blendRange: (low, high) =>
    low === high
      ? `Se cumplen todos los límites con ${low} % de entrada.`
      : `Se cumplen todos los límites de ${low} a ${high} % de entrada.`,
  blendPerhaps: (low, high) =>
    `Quizá ${low === high ? `con ${low}` : `de ${low} a ${high}`} % de entrada: lo leído no lo asegura.`,
  noBlend: "Ninguna mezcla cumple todos los límites.",
  never: (limit) => `Ninguna mezcla cumple: ${limit}.`,
  against: (a, b) => `${a} se opone a ${b}.`,
  remineralised: "Con el remineralizador después",
  assumedPassage: "Producto sin leer: se supone un paso de sal de 5 %.",
  noLimits: "No hay ningún aparato con límite.",
  every: "Todos juntos",
  step: (before) => `salto desde ${before}`,
  namedIndices: "Índices con nombre",
  between: (low, high) => (low === high ? low : `${low} a ${high}`),
  indicesNote: "A la temperatura propia del agua, no en caliente. Ninguno dice cómo se corroe un metal dado.",
  charge: "Balance de cargas",
  conductivity: "Conductividad",
  missing: (names) => `no informado: ${names}`,
  hottest: "Agua más caliente en él (puede quedar en blanco)",
  steel: "Acero del que está hecho, si el manual lo dice",
  steelAsk: "Hasta que se elija, el cloruro solo se juzga donde 304 y 316 coinciden.",
  copper: "Cobre o latón en su agua",
  copperAsk: "Hasta que se elija, no se puede juzgar el agua de pocos minerales.",
  done: "Hecho",
  noLime: "Sin calcio ni alcalinidad no hay cal que se deposite.",
};
