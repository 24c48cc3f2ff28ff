import type { Measure, SignKind } from "@tapside/diagnosis";
import { SIGNS } from "@tapside/diagnosis";
import type { CauseMessages } from "../cause-messages.ts";
import { plainNumber } from "../plain-number.ts";
import { causeNames } from "./cause-names.ts";
import { ports, setUps, signs, tests } from "./cause-tests.ts";

const parts: CauseMessages["parts"] = {
  element: "element",
  preFilter: "pre-filter cartridge",
  carbon: "carbon cartridge",
  postFilter: "post-filter",
  oRing: "O-rings",
  brineSeal: "brine seal",
  restrictor: "drain restrictor",
  drainTube: "drain tube",
  shutOffValve: "shut-off valve",
  checkValve: "check valve",
  tank: "tank",
  bypassValve: "bypass valve",
  tube: "tube",
  booster: "booster pump",
  softenerSalt: "softener salt",
  handPump: "hand pump",
  tdsStandard: "TDS standard",
  gauge: "gauge",
};

const cautions: CauseMessages["cautions"] = {
  pressureToZero: "Close the feed and let all pressure down to zero before opening anything.",
  appliancesHeld: "Stop the appliances first: they must not run dry.",
  tankHeavy: "A full tank is heavy: empty it before lifting.",
  handPumpOnly: "Charge with a hand pump only, never a compressor.",
  platePressure: "Never above the pressure on the plate.",
  electricityOff: "Switch off and isolate electricity; licensed work where the law says so.",
  rinseNewCarbon: "Rinse new carbon to drain.",
  rinseNewElement: "Rinse a new element to drain.",
  sanitise: "Sanitise what was opened, then rinse it out.",
  discardTanks: "Discard the first tanks; nobody drinks them.",
  backflow: "Leave the backflow guard as the code wants it.",
  drainGap: "Keep the air gap at the drain.",
  makersInstructions: "Follow the maker's instructions.",
};

const complaints: CauseMessages["complaints"] = {
  routine: "Nobody: routine",
  runsOut: "Runs out",
  weakAtTap: "Weak at the tap",
  taste: "Taste",
  highSolids: "High TDS",
  drainRuns: "Drain runs on",
};

const units = {
  pressure: [
    ["psi", 6.894757],
    ["bar", 100],
    ["kPa", 1],
  ],
  flow: [
    ["L/min", 60],
    ["L/h", 1],
  ],
  solids: [["mg/L as NaCl", 1]],
  temperature: [["°C", 1]],
  chlorine: [["mg/L", 1]],
  hardness: [["mg/L as CaCO3", 1]],
  litres: [["L", 1]],
  ratio: [["% of the right value", 0.01]],
  look: [["", 1]],
} as const satisfies Readonly<Record<SignKind, readonly (readonly [string, number])[]>>;

const tools: CauseMessages["tools"] = {
  gauge: "Pressure gauge",
  tdsMeter: "TDS meter",
  tdsStandard: "TDS standard",
  chlorineKit: "Chlorine kit",
  hardnessKit: "Hardness kit",
  handPump: "Hand pump",
};

const two = (value: number): string => plainNumber(Number(value.toPrecision(2)));
const share = (value: number): string => `${two(100 * value)} %`;

const measures: { readonly [M in Measure]: (value: number) => string } = {
  waterPasses: (value) => `element passes ${share(value)} of its water`,
  saltPasses: (value) => `${two(value)} times its salt`,
  drainPasses: (value) => `drain passes ${share(value)} of what it should`,
  filterLoss: (value) => `${two(value)} times the loss of a clean cartridge`,
  feedPressure: (value) => `feed about ${two(value / 6.894757)} psi`,
  temperature: (value) => `water about ${two(value)} °C`,
  airCharge: (value) => `charge about ${two(value / 6.894757)} psi`,
  pastElement: (value) => `${share(value)} goes past the element`,
  chlorinePasses: (value) => `${share(value)} of the chlorine passes`,
  hardness: (value) => `hardness about ${two(value)} mg/L as CaCO3`,
  feedSolids: (value) => `feed about ${two(value)} mg/L as NaCl`,
  meterShows: (value) => `meter shows ${share(value)} of what is there`,
  gaugeShows: (value) => `gauge shows ${share(value)} of what is there`,
  firstDraw: (value) => `first draw ${two(value)} times the rest`,
  dailyLitres: (value) => `about ${two(value)} L wanted a day`,
};

const grade: CauseMessages["grade"] = (size, u) =>
  u > 0.35 ? "size not known yet" : size < 1 / 3 ? "mild" : size < 2 / 3 ? "middling" : "severe";

const seen = "Seen";
const notSeen = "Not seen";

/** The words of finding a cause, apart from the rest so that they come only with the search. */
export const causesEn: CauseMessages & { readonly units: typeof units } = {
  causes: causeNames,
  tests,
  ports,
  signs,
  parts,
  cautions,
  complaints,
  setUps,
  tools,
  measure: (measure, value) => measures[measure](value),
  grade,
  units,
  seen,
  notSeen,
  minutes: (value) => (value < 1 ? "under 1 min" : `${Math.round(value)} min`),
  percent: (p) => (p > 0.99 ? "over 99 %" : p < 0.01 ? "under 1 %" : `${Math.round(100 * p)} %`),
  signText: (sign, value, figures = 3) => {
    const { kind } = SIGNS[sign];
    if (kind === "look") return value >= 0.5 ? seen : notSeen;
    const [unit, factor] = units[kind][0];
    return `${plainNumber(Number((value / factor).toPrecision(figures)))} ${unit}`;
  },
};
