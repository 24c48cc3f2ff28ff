import type { ClaimWords } from "../claim-words.ts";
import { writtenDay } from "../written-day.ts";

const on = writtenDay("en");

export const claim: ClaimWords = {
  title: "Claim file",
  visits: (count) => `${count} visit${count === 1 ? "" : "s"}`,
  titles: {
    unit: "The unit",
    water: "Water when it was fitted",
    limits: "Limits of the appliances",
    history: "History",
    bypassed: "Bypassed",
    parts: "Parts",
    advice: "Advice given and refused",
    records: "Records issued",
  },
  nothing: "nothing on record",
  notListed:
    "What is not listed was not read or not written. The data beside this file hold every reading as typed.",
  nameplate: (plate) => `nameplate: ${plate}`,
  notWritten: "not written",
  permeate: (litresPerHour) => `permeate ${litresPerHour} L/h`,
  rejection: (percent) => `rejection ${percent} %`,
  atPressure: (kPa) => `at ${kPa} kPa`,
  twoElements: (how) =>
    how === undefined
      ? "two elements, the plate for one"
      : `two elements ${how === "series" ? "in series" : "in parallel"}, the plate for one`,
  blended: (percent) => `${percent} % of feed blended in`,
  booster: (kPa, lPerH) => `booster ${kPa} kPa at no flow, ${lPerH} L/h at no rise`,
  restrictor: {
    rated: (lPerH, kPa) => `restrictor ${lPerH} L/h at ${kPa} kPa`,
    capillary: (boreMm, lengthM) => `restrictor: capillary ${boreMm} mm bore, ${lengthM} m`,
    orifice: (boreMm) => `restrictor: hole ${boreMm} mm`,
    measured: (lPerH, kPa, law) =>
      `restrictor measured: ${lPerH} L/h at ${kPa} kPa, ${law === "laminar" ? "a fine tube" : "a hole"}`,
  },
  lines: {
    feed: "line through the filters",
    permeate: "line to the tank",
    drain: "drain line",
    outlet: "line from the tank",
  },
  line: (name, lengthM, boreMm, usual) =>
    `${name} ${lengthM} m, bore ${boreMm} mm${usual ? " (default)" : ""}`,
  permeatePump: "permeate pump before the tank",
  tank: (litres, two, vented) => `${vented ? "vented tank" : "tank"} ${two ? "2 × " : ""}${litres} L`,
  store: "store",
  place: (place, site, from, until, why) =>
    `${place}, ${site}: from ${from ? on(from) : "the beginning"}${until ? ` to ${on(until)}` : ""} (${WHY[why] ?? why})`,
  owner: (name, since) => `owner ${name} since ${on(since)}`,
  notDetectedAt: (value) => `not detected at ${value}`,
  inVolume: (litres) => `for ${litres} L`,
  atLeast: (value) => `at least ${value}`,
  atMost: (value) => `at most ${value}`,
  scale: (scale) => `scale ${scale}`,
  done: (tasks) => `done: ${tasks}`,
  foundBypassed: (day) => `found bypassed ${on(day)}`,
  nobodyAsked: "nobody asked",
  staysBypassed: "stays bypassed",
  putInUse: "put in use",
  putInUseThatDay: "put in use that day",
  seenAgain: (day) => `seen again ${on(day)}`,
  noLaterVisit: "no later visit",
  allowedUntil: (day) => `allowed until ${on(day)}`,
  seal: (number) => `seal ${number}`,
  part: "part",
  fitted: (day) => `fitted ${on(day)}`,
  dayNotKnown: "day not known",
  takenOut: (day) => `taken out ${on(day)}`,
  inService: "in service",
  lot: (lot) => `lot ${lot}`,
  noLot: "lot not written",
  serial: (serial) => `serial ${serial}`,
  stillOpen: "still open",
  record: (day, revision, mark) => `${on(day)}, revision ${revision}: mark ${mark}`,
};

const WHY: Readonly<Record<string, string>> = {
  swapped: "changed for another",
  back: "back from loan",
  store: "to the store",
};
