import type { Assumption } from "@tapside/assessment";
import { plainNumber } from "../plain-number.ts";
import type { RecordWords } from "../record-words.ts";
import { writtenDay } from "../written-day.ts";
import { visit } from "./visit.ts";

const on = writtenDay("en");

const joined = (parts: readonly string[], by = ", ") => parts.filter(Boolean).join(by);

const ORIGINS = {
  unit: "From the unit's record",
  settings: "From your settings",
  house: "Defaults, no published source",
} as const;

const ASSUMED: Readonly<Record<string, string>> = {
  shutOffRatio: "shut-off closes at this share of the feed pressure",
  shutOffRatioU: "that share, give or take, with a permeate pump",
  pumpStrokeRatio: "permeate pump: litres of drain water for each it lifts",
  pumpStrokeRatioU: "that ratio",
  pumpInlet: "permeate pump: pressure it leaves on the element",
  pumpInletU: "that pressure, give or take",
  pumpLoss: "permeate pump: pressure lost in it",
  pumpSlip: "permeate pump: share of the driving water that slips by",
  boosterRise: "booster's rise at no flow",
  boosterOpenFlow: "its flow at no rise",
  boosterOffBelow: "its switch keeps it off below a feed pressure of",
  boosterCurve: "a booster's rise by its curve",
  blendShare: "feed in the mix behind the blend valve",
  blendWanders: "that share",
  usualDrain: "drain at the test pressure, as no restrictor is named",
  restrictorLPerH: "restrictor passes",
  restrictorAtKPaGauge: "at",
  restrictorAtC: "in water of",
  restrictorBoreMm: "restrictor's bore",
  restrictorLengthM: "capillary's length",
  beyondLaminar: "a capillary beyond its laminar range",
  feedTubeLength: "line through the filters, length",
  feedTubeBore: "its bore (filters)",
  permeateTubeLength: "line to the tank, length",
  permeateTubeBore: "its bore (to the tank)",
  drainTubeLength: "drain line, length",
  drainTubeBore: "its bore (drain)",
  outletTubeLength: "line from the tank, length",
  outletTubeBore: "its bore (from the tank)",
  cleanFilterDrop: "drop of clean pre-filters at 80 L/h",
  cleanFilterDropU: "that drop",
  usualCharge: "air charge where none was found",
  unreadChargeU: "that charge, not read",
  chargeWanders: "a charge since it was last read",
  standingAbove: "the feed with nothing flowing above its flowing pressure, where not read",
  standingAboveU: "that rise",
  nameplateFlow: "a nameplate's flow is good to",
  nameplateSalt: "a nameplate's salt passage is good to",
  knownFlow: "flow of an element seen before, from visit to visit",
  knownSalt: "salt passage of an element seen before",
  restrictor: "flow restrictor",
  feedWanders: "feed solids since they were last read",
  filling: "filling time",
  tankVolume: "tank volume",
  cup: "measuring cup",
  stopwatch: "stopwatch, start and stop",
  flowReading: "a flow expected, as it will be read",
  solidsReading: "dissolved solids expected, as they will be read",
  gauge: "a pressure expected, as it will be read",
};

const OPTIONAL = { keep: "keeps the unit", takeOut: "wants it taken out", undecided: "not decided" } as const;
const NEIGHBOURS = {
  same: "the same as here",
  waterMoved: "the same as here, so the water has changed, not the meter",
  thisOne: "they agree with each other, not with this reading: meter or tap in question",
  cannotTell: "otherwise than here: water or meter, not told",
} as const;

const TANK = { full: "full, drain silent", filling: "filling", unknown: "not known" } as const;

const assumption = ({ id, value, unit }: Assumption): string =>
  `${ASSUMED[id] ?? id} ${unit === "%" ? "± " : ""}${plainNumber(value)} ${unit}`.trimEnd();

/** The printed record in English. */
export const record: RecordWords = {
  locale: "en-GB",
  title: "Service record",
  head: ["as found", "as left", "limit: source"],
  marks: { none: "", outside: "outside", notExpected: "not as expected", tooClose: "too close to say" },
  rows: {
    drain: "Drain",
    permeate: "Permeate",
    percentReduction: "Percent reduction",
    membraneFlow: "Membrane flow",
    saltPassage: "Salt passage",
    airCharge: "Tank air charge",
    usableLitres: "Usable litres",
  },
  cause: {
    found: (name) => `Found, put right and measured again: ${name}`,
    mostLikely: (name) => `Most likely, not proved: ${name}`,
    notConfirmed: (name) => `Looked for, not confirmed: ${name}`,
  },
  titles: {
    findings: "Findings",
    questioned: "Readings that were questioned",
    causes: "Cause",
    inspection: "Inspection",
    sampling: "Tank when the samples were taken",
    valves: "Valves as left",
    fitted: "Parts fitted and settings made",
    decisions: "Advice and decisions",
    open: "Open",
    due: "Next due, by date or litres, whichever first",
    standOn: "What the numbers stand on",
    readings: "Readings as taken",
    notRead: "Not read",
    instruments: "Instruments",
    sources: "Sources of limits",
    assumed: "Taken for granted where nothing was read (percentages: one standard deviation)",
    life: "Life of this element",
  },
  life: { salt: "salt", flow: "flow", fresh: "new", today: "this visit" },
  says: {
    notRead: "not read",
    noPort: "no port",
    photoOnly: "photo only",
    forInformation: "for information",
    noLimit: "no limit given",
    thisUnitToday: "this unit today",
    allWithin: "Everything that could be judged is within its limit.",
    notConfirmed: "Not confirmed: ",
    found: "Found: ",
    mostLikely: "most likely: ",
    bypassed: "The unit is bypassed.",
    outsideFound: "Findings outside their limits.",
    nothingChanged: "Nothing had to be changed.",
    nobodyPresent: "Nobody of the kitchen was present.",
    technicianNotNamed: "technician not named",
    notWritten: "not written down",
    asItShouldBe: "all as it should be, as far as looked at",
    signature: "Signature",
    uncertainty:
      "± is the expanded uncertainty U (k = 2) by first-order propagation (JCGM 100). Within and outside are stated only when the value clears its limit by U; else it is too close to say.",
    noScale: "No scale of dissolved solids was written down.",
    usualAccuracy: "Where no instrument is named, accuracies usual for its kind were taken.",
    instrumentNotNamed: "instrument not named",
    doubtful: "doubtful, not used",
    timeAhead: "its time lies after this record: a clock was wrong",
    changedSince: "Inputs changed since this record was issued.",
    notTaken: "not taken",
    notFitted: "not fitted on this unit",
    due: " (due)",
    usedUp: ", its rated litres are used up",
    fittingUnknown: "fitting date not known",
  },
  atTheUnit: (temperature) => joined(["at the unit", temperature]),
  times: (kind, from, to) => `${kind}, ${from} to ${to}`,
  revision: (n) => `revision ${n}`,
  replaces: (revision, shortMark) =>
    `Replaces revision ${revision}, record mark ${shortMark}: what it was judged from was changed after it was issued.`,
  page: (revision, page, of) => `revision ${revision}, page ${page} of ${of}`,
  shortMark: (mark) => `record mark ${mark}`,
  wholeMark: (mark) =>
    `Record mark, SHA-256 of the frozen text: ${mark}. An exported file is re-checked by: tapside verify FILE`,
  writtenOtherwise: (words) =>
    `The letters of this print lack some signs. Written otherwise here: ${words}. The exported file and the record itself keep them as they were typed.`,
  limit: (text) => `limit ${text}`,
  toDo: (text) => `to do: ${text}`,
  done: (tasks) => `Done: ${tasks}.`,
  present: (name, role) => `${joined([name, role])}: present at the end`,
  doesNotSign: (name) => `${name || "present person"}: does not sign`,
  technician: (name) => `${name}, technician`,
  exception: (item, state, note) =>
    joined([`${item.toLowerCase()}: ${state === "left" ? "left as it was" : state}`, note]),
  tankState: (state) => TANK[state],
  valve: (valve, state, seal) => joined([`${valve} ${state}`, seal && `seal ${seal}`]),
  appliancesFill: (seen) => (seen ? "appliances seen filling" : "appliances not seen filling"),
  lot: (lot) => (lot ? `lot ${lot}` : "lot not written down"),
  neighbours: (said, count, low, high) =>
    `${count} other ${count === 1 ? "unit" : "units"} on this water read ${low === high ? low : `${low} to ${high}`} µS/cm within 14 days: ${NEIGHBOURS[said]}.`,
  copiesTo: (names) => `Copies to: ${names}`,
  bypass: ({ name, role, authority, byPhone, words, decision, until, seal, noSeal }) =>
    joined([
      `Bypass: asked ${joined([name, role])}${authority ? ` (may allow it as ${visit.authorities[authority] ?? authority})` : ""}${byPhone ? " by telephone" : ""}${words ? `: “${words}”` : ""}; ${decision === "putInUse" ? "put back in use" : `stays bypassed until ${until ? on(until) : "no end date given"}`}`,
      seal ? `seal ${seal}` : noSeal ? "no seal fitted" : "",
    ]),
  roOptional: ({ name, role, decision }) =>
    `RO optional at this feed: asked ${name}, ${role}; ${OPTIONAL[decision]}`,
  filling: (state, hours) =>
    `Filling, shut-off ${state === "reported" ? "to be reported by the kitchen" : "not seen"}${hours ? `; expected about ${hours.toFixed(1)} h` : ""}`,
  left: (task, reason) => joined([`${task}: left`, reason]),
  notDone: (task, why) => `${task}: not done (${why})`,
  earlier: (point, owner, due) =>
    joined([`from an earlier visit: ${point}; ${owner || "owner not named"}`, due && `by ${on(due)}`]),
  settled: (point, how) => `${point}: ${how}`,
  keptOpen: (reason) => `looked at again, kept open: ${reason}`,
  dueBy: (role, date, litres) => `${role}: ${date ? `by ${on(date)}` : "fitting date not known"}${litres}`,
  moreLitres: (low, high) => `, or after ${low === high ? low : `${low} to ${high}`} m³ more`,
  temperatureForm: (form) =>
    `Membrane flow and salt passage are corrected to reference conditions in the form of ASTM D4516 with the temperature form ${form}, against this element when new.`,
  scales: (scales) => `Dissolved solids are as the meter shows them on the scale ${scales}.`,
  cup: (litres) => `for ${litres} L`,
  scale: (scale) => `scale ${scale}`,
  nothingSeen: (step) => `nothing seen, step ${step}`,
  instrument: (name, unit, scale, checked, afterVisit) =>
    `${joined([`${name}: ${unit}`, scale && `scale ${scale}`])}; last checked ${checked ? on(checked) : "not known"}${afterVisit ? ", after this visit" : ""}`,
  assumptions: (assumed) =>
    (Object.keys(ORIGINS) as (keyof typeof ORIGINS)[]).flatMap((origin) => {
      const own = assumed.filter((one) => one.origin === origin);
      return own.length === 0 ? [] : [`${ORIGINS[origin]}: ${own.map(assumption).join("; ")}`];
    }),
};
