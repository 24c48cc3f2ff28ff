import type { Messages } from "../messages.ts";
import { writtenDay } from "../written-day.ts";
import { taskTitle } from "./tasks.ts";

const on = writtenDay("es");

/** What is looked at on arrival. */
export const inspection: Messages["inspection"] = {
  bypassValve: "Válvula de desvío",
  inlet: "Toma y válvula de entrada",
  restrictor: "Restrictor de flujo",
  drainLine: "Drenaje y brecha de aire",
  sampleValve: "Válvula de muestra",
  lineOut: "Línea hacia los aparatos",
  tankValve: "Válvula del tanque abierta",
  tank: "Tanque: óxido, válvula de aire mojada",
  leaks: "Goteos o marcas de agua",
  leakStop: "Corte por fuga: colocado y probado",
  drainPump: "Bomba de condensado, flotador, sifón compartido",
  drainSilent: "Drenaje en silencio con tanque lleno",
  uvAlarm: "UV, si hay: lámpara encendida, sin alarma",
  softenerSalt: "Ablandador, si hay: sal, dureza a la salida",
};

const CODES: Readonly<Record<string, string>> = {
  fillingNotSeen: "No se vio el llenado ni el corte",
  bypassed: "Equipo en desvío",
  noAccess: "Visita no realizada",
  advice: "Recomendación",
  shutDown: "Equipo fuera de servicio: reiniciar antes de usar",
};

/** A point left open, in words; what was written beside it follows. */
export const openPoint: Messages["openPoint"] = ({ code = "", detail }) => {
  const [stem, ...rest] = code.split(":");
  const what = rest.join(":");
  const text =
    stem === "work"
      ? `${taskTitle(what)}: no hecho`
      : stem === "exception"
        ? (inspection[what] ?? what)
        : (CODES[code] ?? code);
  const until = code === "bypassed" && detail ? `, hasta ${on(detail)}` : detail ? `: ${detail}` : "";
  return `${text}${until}`;
};

/** How a point was settled: closed, or refused by whom, in which words, when. */
export const settledPoint: Messages["settledPoint"] = (point) => {
  if (!point.refusedBy) return point.closedOn ? `cerrado ${point.closedOn}` : "cerrado";
  const who = [point.refusedBy, point.refusedRole].filter(Boolean).join(", ");
  const said = point.refusedWords ? `: “${point.refusedWords}”` : "";
  return `rechazado por ${who}${point.refusedOn ? `, ${on(point.refusedOn)}` : ""}${said}`;
};
