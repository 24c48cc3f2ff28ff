import type { ClaimWords } from "../claim-words.ts";
import { writtenDay } from "../written-day.ts";
import { number } from "./number.ts";

const on = writtenDay("es");

export const claim: ClaimWords = {
  title: "Expediente de reclamo",
  visits: (count) => `${count} ${count === 1 ? "visita" : "visitas"}`,
  titles: {
    unit: "El equipo",
    water: "El agua cuando se instaló",
    limits: "Límites de los aparatos",
    history: "Historial",
    bypassed: "En desvío",
    parts: "Piezas",
    advice: "Recomendaciones dadas y rechazadas",
    records: "Registros emitidos",
  },
  nothing: "nada registrado",
  notListed:
    "Lo que no aparece no se leyó o no se escribió. Los datos junto a este archivo contienen cada lectura tal como se escribió.",
  nameplate: (plate) => `placa: ${plate}`,
  notWritten: "no escrito",
  permeate: (litresPerHour) => `permeado ${litresPerHour} L/h`,
  rejection: (percent) => `rechazo de sales ${number(percent)} %`,
  atPressure: (kPa) => `a ${kPa} kPa`,
  twoElements: (how) =>
    how === undefined
      ? "dos elementos, la placa es de uno"
      : `dos elementos ${how === "series" ? "en serie" : "en paralelo"}, la placa es de uno`,
  blended: (percent) => `${percent} % de agua de entrada mezclada`,
  booster: (kPa, lPerH) => `bomba elevadora ${kPa} kPa sin caudal, ${lPerH} L/h sin presión`,
  restrictor: {
    rated: (lPerH, kPa) => `restrictor ${lPerH} L/h a ${kPa} kPa`,
    capillary: (boreMm, lengthM) => `restrictor: capilar de ${boreMm} mm interior, ${lengthM} m`,
    orifice: (boreMm) => `restrictor: orificio de ${boreMm} mm`,
    measured: (lPerH, kPa, law) =>
      `restrictor medido: ${lPerH} L/h a ${kPa} kPa, ${law === "laminar" ? "un tubo fino" : "un orificio"}`,
  },
  lines: {
    feed: "línea por los filtros",
    permeate: "línea al tanque",
    drain: "línea de drenaje",
    outlet: "línea desde el tanque",
  },
  line: (name, lengthM, boreMm, usual) =>
    `${name} ${lengthM} m, interior ${boreMm} mm${usual ? " (por defecto)" : ""}`,
  permeatePump: "bomba de permeado antes del tanque",
  tank: (litres, two, vented) =>
    `${vented ? "tanque sin presión" : "tanque"} ${two ? "2 × " : ""}${litres} L`,
  store: "depósito",
  place: (place, site, from, until, why) =>
    `${place}, ${site}: desde ${from ? on(from) : "el inicio"}${until ? ` hasta ${on(until)}` : ""} (${WHY[why] ?? why})`,
  owner: (name, since) => `dueño ${name} desde ${on(since)}`,
  notDetectedAt: (value) => `no detectado, escalón ${value}`,
  inVolume: (litres) => `para ${number(litres)} L`,
  atLeast: (value) => `al menos ${number(value)}`,
  atMost: (value) => `como máximo ${number(value)}`,
  scale: (scale) => `escala ${scale}`,
  done: (tasks) => `hecho: ${tasks}`,
  foundBypassed: (day) => `hallado en desvío ${on(day)}`,
  nobodyAsked: "no se preguntó a nadie",
  staysBypassed: "sigue en desvío",
  putInUse: "puesto en uso",
  putInUseThatDay: "puesto en uso ese día",
  seenAgain: (day) => `visto de nuevo ${on(day)}`,
  noLaterVisit: "sin visita posterior",
  allowedUntil: (day) => `permitido hasta ${on(day)}`,
  seal: (number) => `precinto ${number}`,
  part: "pieza",
  fitted: (day) => `colocada ${on(day)}`,
  dayNotKnown: "en día no conocido",
  takenOut: (day) => `sacada ${on(day)}`,
  inService: "en servicio",
  lot: (lot) => `lote ${lot}`,
  noLot: "lote no escrito",
  serial: (serial) => `serie ${serial}`,
  stillOpen: "sigue pendiente",
  record: (day, revision, mark) => `${on(day)}, revisión ${revision}: marca ${mark}`,
};

const WHY: Readonly<Record<string, string>> = {
  fitted: "colocado",
  moved: "trasladado",
  swapped: "cambiado por otro",
  lent: "en préstamo",
  back: "de vuelta del préstamo",
  store: "al depósito",
  removed: "retirado",
};
