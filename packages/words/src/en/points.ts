import type { Messages } from "../messages.ts";
import { writtenDay } from "../written-day.ts";
import { taskTitle } from "./tasks.ts";

const on = writtenDay("en");

/** What is looked at on arrival. */
export const inspection: Messages["inspection"] = {
  bypassValve: "Bypass valve",
  inlet: "Inlet and feed valve",
  restrictor: "Flow restrictor",
  drainLine: "Drain line and air gap",
  sampleValve: "Sample valve",
  lineOut: "Line to the equipment",
  tankValve: "Tank valve open",
  tank: "Tank: rust, wet air valve",
  leaks: "Drips or water marks",
  leakStop: "Leak stop: there and tested",
  drainPump: "Condensate pump, float, shared trap",
  drainSilent: "Drain silent when full",
  uvAlarm: "UV, if fitted: lamp lit, no alarm",
  softenerSalt: "Softener, if fitted: salt, hardness after",
};

const CODES: Readonly<Record<string, string>> = {
  fillingNotSeen: "Filling and shut-off not seen",
  bypassed: "Unit bypassed",
  noAccess: "Visit not done",
  advice: "Advice",
  shutDown: "Unit shut down: restart before use",
};

/** A point left open, in words; what was written beside it follows. */
export const openPoint: Messages["openPoint"] = ({ code = "", detail }) => {
  const [stem, ...rest] = code.split(":");
  const what = rest.join(":");
  const text =
    stem === "work"
      ? `${taskTitle(what)}: not done`
      : stem === "exception"
        ? (inspection[what] ?? what)
        : (CODES[code] ?? code);
  const until = code === "bypassed" && detail ? `, until ${on(detail)}` : detail ? `: ${detail}` : "";
  return `${text}${until}`;
};

/** How a point was settled: closed, or refused by whom, in which words, when. */
export const settledPoint: Messages["settledPoint"] = (point) => {
  if (!point.refusedBy) return point.closedOn ? `closed ${point.closedOn}` : "closed";
  const who = [point.refusedBy, point.refusedRole].filter(Boolean).join(", ");
  const said = point.refusedWords ? `: “${point.refusedWords}”` : "";
  return `refused by ${who}${point.refusedOn ? `, ${on(point.refusedOn)}` : ""}${said}`;
};
