import type { CauseMessages } from "../cause-messages.ts";
import { causesIn } from "../causes-in.ts";
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

const tools: CauseMessages["tools"] = {
  gauge: "Pressure gauge",
  tdsMeter: "TDS meter",
  tdsStandard: "TDS standard",
  chlorineKit: "Chlorine kit",
  hardnessKit: "Hardness kit",
  handPump: "Hand pump",
};

/** The words of finding a cause, apart from the rest so that they come only with the search. */
export const causesEn: CauseMessages = causesIn({
  decimalSign: ".",
  causes: causeNames,
  tests,
  ports,
  signs,
  parts,
  cautions,
  complaints,
  setUps,
  tools,
  measures: {
    waterPasses: (share) => `element passes ${share} of its water`,
    saltPasses: (times) => `${times} times its salt`,
    drainPasses: (share) => `drain passes ${share} of what it should`,
    filterLoss: (times) => `${times} times the loss of a clean cartridge`,
    feedPressure: (psi) => `feed about ${psi} psi`,
    temperature: (celsius) => `water about ${celsius} °C`,
    airCharge: (psi) => `charge about ${psi} psi`,
    pastElement: (share) => `${share} goes past the element`,
    chlorinePasses: (share) => `${share} of the chlorine passes`,
    hardness: (mgPerL) => `hardness about ${mgPerL} mg/L as CaCO3`,
    feedSolids: (mgPerL) => `feed about ${mgPerL} mg/L as NaCl`,
    meterShows: (share) => `meter shows ${share} of what is there`,
    gaugeShows: (share) => `gauge shows ${share} of what is there`,
    firstDraw: (times) => `first draw ${times} times the rest`,
    dailyLitres: (litres) => `about ${litres} L wanted a day`,
  },
  grades: { unknown: "size not known yet", mild: "mild", middling: "middling", severe: "severe" },
  seen: "Seen",
  notSeen: "Not seen",
  under: "under",
  over: "over",
  asNaCl: "as NaCl",
  asCaCO3: "as CaCO3",
  ofRight: "of the right value",
});
