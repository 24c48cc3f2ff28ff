import type { Assumption } from "@tapside/assessment";
import { inSign } from "../in-sign.ts";
import type { RecordWords } from "../record-words.ts";
import { writtenDay } from "../written-day.ts";
import { lowerFirst } from "./names.ts";
import { DECIMAL_SIGN, number } from "./number.ts";
import { visit } from "./visit.ts";

const on = writtenDay("es");

const joined = (parts: readonly string[], by = ", ") => parts.filter(Boolean).join(by);

const ORIGINS = {
  unit: "De la ficha del equipo",
  settings: "De sus ajustes",
  house: "Valores por defecto, sin fuente publicada",
} as const;

const ASSUMED: Readonly<Record<string, string>> = {
  shutOffRatio: "el corte cierra a esta parte de la presión de entrada",
  shutOffRatioU: "esa parte, más o menos, con bomba de permeado",
  pumpStrokeRatio: "bomba de permeado: litros de drenaje por cada litro que eleva",
  pumpStrokeRatioU: "esa relación",
  pumpInlet: "bomba de permeado: presión que deja sobre el elemento",
  pumpInletU: "esa presión, más o menos",
  pumpLoss: "bomba de permeado: presión que se pierde en ella",
  pumpSlip: "bomba de permeado: parte del agua motriz que se escapa",
  boosterRise: "presión que agrega la bomba elevadora sin caudal",
  boosterOpenFlow: "su caudal sin presión agregada",
  boosterOffBelow: "su interruptor la deja apagada por debajo de una presión de entrada de",
  boosterCurve: "presión que agrega una bomba según su curva",
  blendShare: "agua de entrada en la mezcla tras la válvula",
  blendWanders: "esa parte",
  usualDrain: "drenaje a la presión de ensayo, pues no se indica restrictor",
  restrictorLPerH: "el restrictor deja pasar",
  restrictorAtKPaGauge: "a",
  restrictorAtC: "en agua de",
  restrictorBoreMm: "diámetro interior del restrictor",
  restrictorLengthM: "largo del capilar",
  beyondLaminar: "un capilar fuera de su rango laminar",
  feedTubeLength: "línea por los filtros, largo",
  feedTubeBore: "su diámetro interior (filtros)",
  permeateTubeLength: "línea al tanque, largo",
  permeateTubeBore: "su diámetro interior (al tanque)",
  drainTubeLength: "línea de drenaje, largo",
  drainTubeBore: "su diámetro interior (drenaje)",
  outletTubeLength: "línea desde el tanque, largo",
  outletTubeBore: "su diámetro interior (desde el tanque)",
  cleanFilterDrop: "caída de prefiltros limpios a 80 L/h",
  cleanFilterDropU: "esa caída",
  usualCharge: "carga de aire donde no se halló ninguna",
  unreadChargeU: "esa carga, sin leer",
  chargeWanders: "una carga desde la última lectura",
  standingAbove: "la entrada sin flujo por encima de la que fluye, donde no se leyó",
  standingAboveU: "ese aumento",
  nameplateFlow: "el caudal de una placa es exacto a",
  nameplateSalt: "el paso de sal de una placa es exacto a",
  knownFlow: "caudal de un elemento ya visto, de visita a visita",
  knownSalt: "paso de sal de un elemento ya visto",
  restrictor: "restrictor de flujo",
  feedWanders: "sólidos de entrada desde la última lectura",
  filling: "tiempo de llenado",
  tankVolume: "volumen del tanque",
  cup: "vaso medidor",
  stopwatch: "cronómetro, inicio y fin",
  flowReading: "un caudal esperado, tal como se leerá",
  solidsReading: "sólidos disueltos esperados, tal como se leerán",
  gauge: "una presión esperada, tal como se leerá",
};

const OPTIONAL = {
  keep: "conserva el equipo",
  takeOut: "quiere retirarlo",
  undecided: "sin decidir",
} as const;
const NEIGHBOURS = {
  same: "lo mismo que aquí",
  waterMoved: "lo mismo que aquí: cambió el agua, no el medidor",
  thisOne: "coinciden entre sí y no con esta lectura: medidor o toma en duda",
  cannotTell: "distinto de aquí: agua o medidor, no se sabe",
} as const;

const TANK = { full: "lleno, drenaje en silencio", filling: "llenándose", unknown: "no se sabe" } as const;
const VALVES = {
  feed: "válvula de entrada",
  tank: "válvula del tanque",
  bypass: "válvula de desvío",
  drain: "válvula de drenaje",
  sample: "válvula de muestra",
  blend: "válvula de mezcla",
} as const;

const assumption = ({ id, value, unit }: Assumption): string =>
  `${ASSUMED[id] ?? id} ${unit === "%" ? "± " : ""}${number(value)} ${unit}`.trimEnd();

/** The printed record in Spanish. */
export const record: RecordWords = {
  locale: "es-419-u-hc-h23",
  title: "Registro de servicio",
  head: ["al llegar", "al salir", "límite: fuente"],
  marks: {
    none: "",
    outside: "fuera",
    notExpected: "no es lo esperado",
    tooClose: "demasiado justo para decir",
  },
  rows: {
    drain: "Drenaje",
    permeate: "Permeado",
    percentReduction: "Reducción porcentual",
    membraneFlow: "Caudal de membrana",
    saltPassage: "Paso de sal",
    airCharge: "Carga de aire del tanque",
    usableLitres: "Litros útiles",
  },
  titles: {
    findings: "Hallazgos",
    questioned: "Lecturas que se cuestionaron",
    causes: "Causa",
    inspection: "Revisión",
    sampling: "Tanque al tomar las muestras",
    valves: "Válvulas al salir",
    fitted: "Piezas colocadas y ajustes hechos",
    decisions: "Recomendaciones y decisiones",
    open: "Pendiente",
    due: "Próximo vencimiento, por fecha o litros, lo que llegue primero",
    standOn: "En qué se apoyan los números",
    readings: "Lecturas tal como se tomaron",
    notRead: "No leído",
    instruments: "Instrumentos",
    sources: "Fuentes de los límites",
    assumed: "Supuesto donde no se leyó nada (porcentajes: una desviación estándar)",
    life: "Vida de este elemento",
  },
  cause: {
    found: (name) => `Hallado, corregido y medido de nuevo: ${name}`,
    mostLikely: (name) => `Lo más probable, sin probar: ${name}`,
    notConfirmed: (name) => `Se buscó, no se confirmó: ${name}`,
  },
  life: { salt: "sal", flow: "caudal", fresh: "nuevo", today: "esta visita" },
  says: {
    notRead: "no leído",
    noPort: "sin toma",
    photoOnly: "solo foto",
    forInformation: "informativo",
    noLimit: "sin límite dado",
    thisUnitToday: "este equipo hoy",
    allWithin: "Todo lo que se pudo juzgar está dentro de su límite.",
    notConfirmed: "No confirmado: ",
    found: "Hallado: ",
    mostLikely: "lo más probable: ",
    bypassed: "El equipo está en desvío.",
    outsideFound: "Hallazgos fuera de sus límites.",
    nothingChanged: "No hubo que cambiar nada.",
    nobodyPresent: "No estuvo presente nadie de la cocina.",
    technicianNotNamed: "técnico sin nombre",
    notWritten: "no se anotó",
    asItShouldBe: "todo como debe ser, hasta donde se miró",
    signature: "Firma",
    uncertainty:
      "± es la incertidumbre expandida U (k = 2) por propagación de primer orden (JCGM 100). Dentro y fuera se dicen solo cuando el valor se separa de su límite por U; si no, es demasiado justo para decir.",
    noScale: "No se anotó ninguna escala de sólidos disueltos.",
    usualAccuracy: "Donde no se nombra un instrumento se tomaron exactitudes usuales de su tipo.",
    instrumentNotNamed: "instrumento sin nombre",
    doubtful: "dudoso, no se usó",
    timeAhead: "su hora es posterior a este registro: un reloj estaba mal",
    changedSince: "Los datos cambiaron desde que se emitió este registro.",
    notTaken: "no tomado",
    notFitted: "no instalado en este equipo",
    due: " (vencido)",
    usedUp: ", sus litros nominales se agotaron",
    fittingUnknown: "fecha de colocación desconocida",
  },
  atTheUnit: (temperature) => joined(["en el equipo", temperature]),
  times: (kind, from, to) => `${kind}, de ${from} a ${to}`,
  revision: (n) => `revisión ${n}`,
  replaces: (revision, shortMark) =>
    `Sustituye a la revisión ${revision}, marca de registro ${shortMark}: lo que sirvió para juzgar cambió después de emitirla.`,
  page: (revision, page, of) => `revisión ${revision}, página ${page} de ${of}`,
  shortMark: (mark) => `marca de registro ${mark}`,
  wholeMark: (mark) =>
    `Marca de registro, SHA-256 del texto congelado: ${mark}. Un archivo exportado se comprueba con: tapside verify FILE`,
  writtenOtherwise: (words) =>
    `A la letra de esta impresión le faltan algunos signos. Escrito aquí de otro modo: ${words}. El archivo exportado y el registro mismo los conservan como se escribieron.`,
  limit: (text) => `límite ${text}`,
  toDo: (text) => `por hacer: ${text}`,
  done: (tasks) => `Hecho: ${tasks}.`,
  present: (name, role) => `${joined([name, role])}: presente al final`,
  doesNotSign: (name) => `${name || "persona presente"}: no firma`,
  technician: (name) => `${name}, técnico`,
  exception: (item, state, note) =>
    joined([`${lowerFirst(item)}: ${state === "left" ? "se dejó como estaba" : state}`, note]),
  tankState: (state) => TANK[state],
  valve: (valve, state, seal) =>
    joined([`${VALVES[valve]} ${state === "open" ? "abierta" : "cerrada"}`, seal && `precinto ${seal}`]),
  appliancesFill: (seen) => (seen ? "se vio llenar los aparatos" : "no se vio llenar los aparatos"),
  neighbours: (said, count, low, high) =>
    `${count === 1 ? "Otro equipo" : `Otros ${count} equipos`} con esta agua: ${low === high ? low : `${low} a ${high}`} µS/cm en 14 días: ${NEIGHBOURS[said]}.`,
  copiesTo: (names) => `Copias a: ${names}`,
  lot: (lot) => (lot ? `lote ${lot}` : "lote no anotado"),
  bypass: ({ name, role, authority, byPhone, words, decision, until, seal, noSeal }) =>
    joined([
      `Desvío: se preguntó a ${joined([name, role])}${authority ? ` (puede permitirlo como ${visit.authorities[authority] ?? authority})` : ""}${byPhone ? " por teléfono" : ""}${words ? `: “${words}”` : ""}; ${decision === "putInUse" ? "puesto de nuevo en uso" : `sigue en desvío hasta ${until ? on(until) : "fecha final no indicada"}`}`,
      seal ? `precinto ${seal}` : noSeal ? "sin precinto" : "",
    ]),
  roOptional: ({ name, role, decision }) =>
    `Ósmosis opcional con esta agua: se preguntó a ${name}, ${role}; ${OPTIONAL[decision]}`,
  filling: (state, hours) =>
    `Llenándose, corte ${state === "reported" ? "por informar desde la cocina" : "no visto"}${hours ? `; se esperan unas ${inSign(hours.toFixed(1), DECIMAL_SIGN)} h` : ""}`,
  left: (task, reason) => joined([`${task}: se dejó`, reason]),
  notDone: (task, why) => `${task}: no hecho (${why})`,
  earlier: (point, owner, due) =>
    joined([
      `de una visita anterior: ${point}; ${owner || "responsable sin nombre"}`,
      due && `para el ${on(due)}`,
    ]),
  settled: (point, how) => `${point}: ${how}`,
  keptOpen: (reason) => `revisado de nuevo, sigue pendiente: ${reason}`,
  dueBy: (role, date, litres) =>
    `${role}: ${date ? `antes del ${on(date)}` : "fecha de colocación desconocida"}${litres}`,
  moreLitres: (low, high) => `, o tras ${low === high ? low : `${low} a ${high}`} m³ más`,
  temperatureForm: (form) =>
    `El caudal de membrana y el paso de sal se corrigen a condiciones de referencia en la forma de ASTM D4516 con la forma de temperatura ${form.replace(/(?<=\d)\.(?=\d)/g, DECIMAL_SIGN)}, frente a este elemento cuando era nuevo.`,
  scales: (scales) => `Los sólidos disueltos son los que muestra el medidor en la escala ${scales}.`,
  cup: (litres) => `para ${number(litres)} L`,
  scale: (scale) => `escala ${scale}`,
  nothingSeen: (step) => `no se vio nada, escalón ${step}`,
  instrument: (name, unit, scale, checked, afterVisit) =>
    `${joined([`${name}: ${unit}`, scale && `escala ${scale}`])}; última comprobación ${checked ? on(checked) : "desconocida"}${afterVisit ? ", después de esta visita" : ""}`,
  assumptions: (assumed) =>
    (Object.keys(ORIGINS) as (keyof typeof ORIGINS)[]).flatMap((origin) => {
      const own = assumed.filter((one) => one.origin === origin);
      return own.length === 0 ? [] : [`${ORIGINS[origin]}: ${own.map(assumption).join("; ")}`];
    }),
};
