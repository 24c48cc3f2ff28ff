import type { Messages } from "../messages.ts";

export const phases: Messages["phases"] = { asFound: "Al llegar", asLeft: "Al salir" };

export const visitKinds: Messages["visitKinds"] = {
  annual: "Visita anual",
  filterOnly: "Solo filtros",
  callOut: "Visita por avería",
  quality: "Queja de sabor o calidad",
  commissioning: "Puesta en marcha",
  survey: "Inspección previa a la instalación",
  returnVisit: "Visita de regreso",
  shutDown: "Cierre de temporada",
  restart: "Reinicio de temporada",
  removal: "Retiro del equipo",
  noAccess: "Sin acceso",
};

export const slots: Messages["slots"] = {
  feedTds: "TDS de entrada",
  feedTemperature: "Temperatura de entrada",
  chlorineBefore: "Cloro en la entrada",
  chlorineAfter: "Cloro tras el carbón",
  staticPressure: "Presión sin flujo",
  beforeFilterPressure: "Antes de los filtros",
  afterFilterPressure: "Después de los filtros",
  permeateFlow: "Caudal de permeado",
  drainFlow: "Caudal de drenaje",
  permeateTds: "TDS a desagüe",
  deliveredTds: "TDS entregado",
  tankFullPressure: "Manómetro del tanque",
  drawnVolume: "Litros extraídos",
  tankAfterPressure: "Tanque tras extraer",
  airCharge: "Carga de aire",
  waterMeter: "Medidor de agua",
  hardness: "Dureza de entrada",
  firstDrawTds: "TDS de la primera agua",
  standardSolution: "Solución patrón",
  drainTds: "TDS de drenaje",
  drainFlowFeedClosed: "Drenaje, entrada cerrada",
  drainFlowTankFull: "Drenaje, tanque lleno",
  postFilterPressure: "Tras el posfiltro",
  deliveredFlow: "Caudal entregado",
  chlorineFreeBefore: "Cloro libre en la entrada",
  chlorineFreeAfter: "Cloro libre tras carbón",
  deliveredChlorine: "Cloro entregado",
  deliveredHardness: "Dureza entregada",
  deliveredAlkalinity: "Alcalinidad entregada",
  deliveredChloride: "Cloruro entregado",
  deliveredSilica: "Sílice entregada",
  deliveredPh: "pH entregado",
  feedAlkalinity: "Alcalinidad de entrada",
  feedChloride: "Cloruro de entrada",
  feedSilica: "Sílice de entrada",
  feedPh: "pH de entrada",
  chloramine: "Cloramina en la entrada",
  peakPressure: "Presión en hora pico",
  nightPressure: "Presión de noche",
  drainGap: "Brecha de aire, drenaje",
  drainHeight: "Altura del drenaje",
  hourCounter: "Contador de horas",
};

export const ports: Messages["ports"] = {
  feed: "Llave de entrada",
  beforeFilter: "Manómetro antes de filtros",
  afterFilter: "Manómetro tras los filtros",
  drain: "Línea de drenaje",
  permeateToWaste: "Muestra de permeado",
  tank: "Manómetro del tanque",
  delivered: "Llave de salida",
  meter: "Medidor de agua",
  hourMeter: "Contador de horas",
  bottle: "Frasco de patrón",
};

export const roles: Messages["roles"] = {
  sediment: "Cartucho de sedimentos",
  carbon: "Cartucho de carbón",
  scaleInhibitor: "Inhibidor de sarro",
  element: "Elemento de membrana",
  postCarbon: "Poscarbón",
  remineraliser: "Remineralizador",
  softener: "Ablandador",
  uvLamp: "Lámpara UV",
  tank: "Tanque",
  restrictor: "Restrictor de flujo",
  checkValve: "Válvula de retención",
  shutOff: "Válvula de corte",
};

export const appliances: Messages["appliances"] = {
  combiOven: "Horno combinado",
  steamer: "Vaporera",
  coffee: "Cafetera",
  ice: "Máquina de hielo",
  dishwasher: "Lavavajillas",
  dispenser: "Dispensador de agua",
  other: "Aparato",
};

export const verdicts: Messages["verdicts"] = {
  within: "dentro",
  outside: "fuera",
  tooClose: "demasiado justo para decir",
  cannotTell: "no se puede saber",
  information: "informativo",
};

const QUANTITIES: Readonly<Record<string, string>> = {
  tds: "sólidos disueltos",
  hardness: "dureza",
  alkalinity: "alcalinidad",
  chloride: "cloruro",
  chlorine: "cloro",
  silica: "sílice",
  pH: "pH",
  tds442: "sólidos disueltos",
  calciumHardness: "dureza cálcica",
  calcium: "calcio",
  sulfate: "sulfato",
  sodium: "sodio",
  freeCo2: "CO₂ libre",
  conductivity25: "conductividad",
  totalChlorine: "cloro",
  calciteIndexHot: "saturación en caliente",
};

export const quantity = (id: string): string => QUANTITIES[id] ?? id;

const SOURCES: Readonly<Record<string, string>> = {
  commonPractice: "práctica común, sin fuente publicada",
  officeRule: "regla de la oficina",
  boosterSwitch: "interruptor de la bomba",
  applianceLabel: "etiqueta del aparato",
  elementLabel: "etiqueta del elemento",
  carbonRating: "capacidad nominal del carbón",
  instrument: "exactitud registrada del medidor",
  "Specialty Coffee Association of America, brewing-water standard":
    "Specialty Coffee Association of America, norma de agua para café",
  "ASPE Pipeline, materials for RO water (100 µS/cm: common practice)":
    "ASPE Pipeline, materiales para agua de ósmosis (100 µS/cm: práctica común)",
  "40 CFR 143.3 secondary level": "40 CFR 143.3, nivel secundario",
  "plate heat-exchanger table (common practice)": "tabla de intercambiadores de placas (práctica común)",
  "Food service water treatment, WC&P, 15 July 2000":
    "Tratamiento de agua en cocinas, WC&P, 15 de julio de 2000",
};

export const source = (id: string): string => SOURCES[id] ?? id;

const RULES: Readonly<Record<string, string>> = {
  "guard-band-U": "banda de guarda: separado del límite por la incertidumbre expandida (k = 2)",
  "at-most-by-conductivity": "no medido; el agua conduce muy poco para contener tanto",
  "not-detected": "no detectado con un escalón que no supera el límite",
  "samples-95":
    "completado a partir de la entrada y el paso: menos de 1 de 20 aguas posibles responden otra cosa",
};

export const rule = (id: string): string => RULES[id] ?? id;

const UNITS: Readonly<Record<string, string>> = {
  "mg/L CaCO3": "mg/L como CaCO₃",
  "uS/cm": "µS/cm",
  "of new": "de lo nuevo",
  "× new": "× lo nuevo",
  "× to waste": "× a desagüe",
  "× its rated litres": "× sus litros nominales",
};

export const unit = (id: string): string => UNITS[id] ?? id;

const FIELDS: Readonly<Record<string, string>> = {
  beforeFilterPressure: "la presión antes de los filtros",
  afterFilterPressure: "la presión después de los filtros",
  tankFullPressure: "el manómetro del tanque",
  tankAfterPressure: "el manómetro del tanque tras extraer",
  permeateTds: "el TDS a desagüe",
  feedTds: "el TDS de entrada",
  deliveredTds: "el TDS entregado",
  chlorineBefore: "el cloro en la entrada",
  deliveredHardness: "la dureza del agua entregada",
  deliveredAlkalinity: "la alcalinidad del agua entregada",
  deliveredChloride: "el cloruro del agua entregada",
  deliveredSilica: "la sílice del agua entregada",
  deliveredPh: "el pH del agua entregada",
  "unit.tankL": "los litros del tanque",
  "unit.ratedPermeateLPerH": "el caudal de permeado de la placa",
  "unit.ratedRejectionPercent": "el rechazo de la placa",
  "unit.testPressureKPaGauge": "la presión de prueba de la placa",
  "unit.testTemperatureC": "la temperatura de prueba de la placa",
  "unit.testFeedMgPerL": "el agua de prueba de la placa",
  "appliance.minimumPressure": "la presión mínima del aparato",
  "unit.shutOffRatio": "la relación de corte",
  "unit.restrictorKind": "la clase de restrictor",
  "unit.restrictorLPerH": "el caudal del restrictor",
  "unit.restrictorAtKPaGauge": "la presión de ese caudal del restrictor",
  "unit.restrictorAtC": "la temperatura del agua al medir el restrictor",
  "unit.restrictorLaw": "si el restrictor medido es un tubo fino o un orificio",
  "unit.restrictorBoreMm": "el diámetro interior del restrictor",
  "unit.restrictorLengthM": "el largo del capilar",
  "unit.feedTubeLengthM": "el largo de la línea por los filtros",
  "unit.permeateTubeLengthM": "el largo de la línea al tanque",
  "unit.drainTubeLengthM": "el largo de la línea de drenaje",
  "unit.outletTubeLengthM": "el largo de la línea desde el tanque",
  "part.carbon": "un cartucho de carbón registrado",
  "part.ratedChlorine": "el cloro con el que se midió el carbón",
  "part.ratedLitres": "los litros nominales del carbón",
  "part.meterAtFitting": "la lectura del medidor con el carbón nuevo",
  "bypass.until": "el día en que termina el permiso",
  "appliance.litresPerDay": "lo que un aparato toma en un día de mucho trabajo",
  "appliance.hottestC": "el agua más caliente del aparato",
  "appliance.steelGrade": "el grado de acero del aparato",
  steelTable: "un límite de cloruro publicado para este acero tan caliente",
  "appliance.copperOrBrass": "la respuesta sobre cobre o latón",
};

export const missingName = (id: string): string =>
  FIELDS[id] ?? (id in slots ? lowerFirst(slots[id as keyof typeof slots]) : quantity(id));

/** "TDS" and "pH" keep their letters. */
export const lowerFirst = (text: string): string =>
  /^(?:[A-Z]{2}|pH)/.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);

/** "a, b y c"; "e" before the sound of i. */
const FITTINGS: Readonly<Record<string, string>> = {
  feed: "una llave de muestra con manómetro antes del equipo",
  beforeFilter: "una te y un manómetro antes de los filtros",
  afterFilter: "una te y un manómetro después de los filtros",
  drain: "un desagüe que se pueda medir",
  permeateToWaste: "una válvula de muestra antes del tanque",
  tank: "una te y un manómetro en el tanque",
  delivered: "una llave de muestra en la entrega",
  meter: "un contador de agua",
  hourMeter: "un contador de horas",
};

/** What has to be fitted so that something can be read at a port. */
export const fitting = (port: string): string => FITTINGS[port] ?? port;

export function listed(names: readonly string[]): string {
  const unique = [...new Set(names)];
  if (unique.length < 2) return unique.join("");
  const last = unique.at(-1) ?? "";
  return `${unique.slice(0, -1).join(", ")} ${/^h?[ií](?!e)/i.test(last) ? "e" : "y"} ${last}`;
}

export const missing: Messages["missing"] = ({ missing: ids }) =>
  `no se puede saber, porque ${new Set(ids.slice(0, 3)).size > 1 ? "faltan" : "falta"} ${listed(ids.slice(0, 3).map(missingName))}`;
