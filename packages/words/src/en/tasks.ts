import type { PartRole } from "@tapside/records";
import type { Messages } from "../messages.ts";
import { plainNumber } from "../plain-number.ts";
import { writtenDay } from "../written-day.ts";
import { finding } from "./findings.ts";
import { roles } from "./names.ts";

const TITLES: Readonly<Record<string, string>> = {
  setAirCharge: "Set the air",
  sanitise: "Sanitise",
  rinseCarbon: "Rinse the carbon to drain",
  discardTank: "Discard two tanks of water",
  findBackflow: "Look for water leaking back",
  rinsePreservative: "Rinse out the preservative",
  shutDown: "Shut the unit down",
  restart: "Restart after standstill",
  remove: "Take the unit out",
};

export const taskTitle: Messages["taskTitle"] = (id) => {
  const [verb, role] = id.split(":");
  if (verb !== "replace" || !role) return TITLES[id] ?? id;
  return `Replace ${(roles[role as PartRole] ?? role).toLowerCase().replace(/^uv/, "UV")}`;
};

export const taskWhy: Messages["taskWhy"] = (task, sign = ".") => {
  const { detail = {} } = task;
  if (task.why === "dueByDate")
    return detail.byDate ? `due by date: ${writtenDay("en")(String(detail.byDate))}` : "due by date";
  if (task.why === "dueByLitres") return "due by litres";
  if (task.why === "dueByHours") return "due by hours";
  if (task.why === "kindOfVisit") return "what this visit is for";
  if (task.why === "openPoint") return "left open at an earlier visit";
  if (task.id === "setAirCharge" && typeof detail.set === "number")
    return `to ${plainNumber(detail.set, sign)}${typeof detail.usableAtBest === "number" ? `: ${detail.usableAtBest.toFixed(0)} L usable` : ""}`;
  if (!detail.finding) return "goes with the work";
  const bare = { id: String(detail.finding), phase: "asFound", verdict: "outside", consequence: 0 } as const;
  return `${finding(bare).title.toLowerCase()} is outside`;
};

const CAUTIONS: Readonly<Record<string, string>> = {
  appliancesHeld: "Appliance heaters and pumps off and held off before the water is shut: dry fire.",
  pressureToZero:
    "Feed shut, tank shut, pressure at zero on the gauge before a housing is opened. The gauge proves it, not the clock.",
  wetElectricity: "Water and mains under the counter: unplug booster and UV, dry hands.",
  wetFloor: "Wet floor: put up the sign.",
  rinseBeforeElement: "Rinse new carbon to drain before it reaches the element.",
  hygiene: "Clean gloves; keep water-side faces off the floor.",
  discardFirstWater:
    "Discard the first water; ice bin and first batches too. Hold the appliances until it is done.",
  uvEyes: "UV harms eyes and skin: unplug before opening.",
  tankHeavy: "A charged 53 L tank holds 30 to 35 L, about 40 kg: drain before lifting.",
  tankEnergy: "Air under pressure: never above the plate, never into a rusted or wet tank.",
  handPumpOnly: "Air by hand pump only, tank empty and its tap open.",
  bleachNeverMixed: "Bleach never with descaler, acid or ammonia: toxic gas.",
  bleachNotThroughElement:
    "Element and carbon out first: bleach destroys the membrane, carbon eats the bleach.",
  ventilate: "Air the room; gloves and goggles.",
  rinseToZero: "Rinse until a strip reads zero before anyone drinks or cooks.",
  stagnantWater:
    "Water that stood can hold Legionella, mould, lead and copper: run it off without spray, drink none of it.",
  deadLegs: "No dead legs: cap at the branch. Work on the building's pipes is for licensed people.",
  unscentedOnly: "Unscented bleach only, as its label allows for drinking-water systems.",
  slowOn: "Feed on slowly: water hammer and trapped air break housings. Look for drips while it fills.",
  disposal: "Used carbon and elements: ordinary waste unless they held arsenic or radium; ask the authority.",
  noUse: "Nobody uses this water until it is released: hang the sign, say it aloud.",
  hotSurfaces: "Hot surfaces and steam at the appliances: let them cool.",
  workingAlone: "Alone? Tell somebody where you are and when you will be out.",
  backflowLicensed:
    "The building's backflow preventer is tested and repaired by licensed people only: leave it as found.",
  reducingValve:
    "Feed above the pressure on the plate: keep it shut. A licensed plumber fits and sets a pressure-reducing valve.",
  productUse:
    "Not for dialysis. Not for infant formula where local guidance forbids it. Not for humidifiers or medical use without their maker's word.",
};

export const caution: Messages["caution"] = (id) =>
  CAUTIONS[id] ?? "Local code and the appliance manual govern.";
