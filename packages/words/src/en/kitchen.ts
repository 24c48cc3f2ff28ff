import type { KitchenWords } from "../kitchen-words.ts";
import { writtenDay } from "../written-day.ts";

const on = writtenDay("en");

export const kitchenEn: KitchenWords = {
  day: {
    title: "The kitchen's busy day",
    asked: (litres, u) => `The kitchen asks ${litres} ± ${u} L on a busy day.`,
    serves: (low, high, celsius) => `The unit serves ${low} to ${high} L in water of ${celsius} °C`,
    verdicts: { keepsUp: "keeps up", tooCloseToSay: "too close to say", short: "runs short" },
    enoughWith: (remedy, low, high) => `Enough with: ${remedy}, ${low} to ${high} L.`,
    nothingTried: "Neither a second tank, a booster nor twice the membrane is surely enough.",
    remedies: {
      asItIs: "As it is",
      airCharge: "Air charge set",
      secondTank: "A second tank",
      booster: "A booster",
      twiceTheElement: "Twice the membrane",
      elementAndTank: "Twice the membrane, second tank",
    },
    air: (psi) => `air at ${psi} psi`,
    estimate: "Estimated from the litres told and the unit as last read; no promise.",
  },
  card: {
    title: "Water unit: card for the kitchen",
    titles: {
      unit: "What it is",
      full: "When the tank is full",
      ring: "Ring at once when",
      never: "Leave alone",
      leak: "Water on the floor",
    },
    unit: (appliances) =>
      `This unit takes most of the dissolved salts out of the tap water${appliances && ` for: ${appliances}`}.`,
    tankHolds:
      "It makes water slowly and keeps it in a tank. While it fills, water runs to the drain: that is right.",
    notBefore: (latest) => `Do not use its water before ${latest}.`,
    fullAbout: (about) => `The tank should be full at about ${about}.`,
    fullNotKnown: "Use its water only once the drain line is silent: the tank is full then.",
    bypassed: "The unit is bypassed: the appliances get tap water as it comes.",
    ring: (name, phone) => [`Ring ${name || "the technician"}`, phone].filter(Boolean).join(", "),
    readOut: {
      time: "Read out: the time when the drain line went silent.",
      gauge: "Read out: what the gauge on the tank shows, and its unit.",
      silent: "Listen again ten minutes later: does the drain line stay silent?",
    },
    ringWhen: [
      "there is water under or beside the unit",
      "the drain line runs for hours while nobody draws water",
      "the water smells of a swimming pool, or tastes or looks otherwise than usual",
      "much less water comes than usual, or an appliance shows a water alarm",
    ],
    never: [
      "Open no housing: it is under pressure.",
      "Turn no valve of the unit but the one that shuts its water; touch no seal.",
      "The tank holds air under pressure: let none out, pump none in.",
    ],
    shutValve: (where) =>
      `Shut the unit's water${where ? `: ${where}` : " at the valve before it"}. Switch off the appliances it feeds before they run dry. Keep off wet floor near plugs.`,
    sign: "The technician scans this sign or types the code.",
    signAsks: "Something is wrong? Scan this sign: four questions go to the technician as a message.",
  },
  page: {
    title: "Your water in plain words",
    titles: {
      water: "The water",
      checks: "What the kitchen looks after itself",
      next: "What is due next",
      open: "Still open",
    },
    feed: (figure) => `From the tap: ${figure} of dissolved solids.`,
    delivered: (figure) => `At the appliances: ${figure}.`,
    takenOut: (percent) => `The unit took out about ${percent} of every 100 parts of what was dissolved.`,
    hardness: (figure) => `Hardness of the tap water, what scale is made of: ${figure}.`,
    notRead: "The water was not read at this visit.",
    bypassed: (until) =>
      `The unit is bypassed${until ? ` until ${on(until)}` : ""}: the appliances get tap water, with all its hardness and chlorine.`,
    kept: (names) => `As it should be: ${names}.`,
    outside: (names) => `Not as it should be: ${names}. The service record says by how much.`,
    notTold: (names) => `Not measured: ${names}.`,
    noLimits: "No limit of its label is on record: show the technician the label or the manual.",
    does: {
      combiOven:
        "Steam leaves everything dissolved behind: hardness bakes on as white scale, chloride eats pits into steel.",
      steamer:
        "Steam leaves everything dissolved behind: hardness bakes on as white scale, chloride eats pits into steel.",
      coffee:
        "Hard water scales boiler and valves; water with almost nothing in it tastes flat and can attack metal.",
      ice: "Hardness clouds the ice and scales the plate; ice keeps smells, and warm or standing water grows slime.",
      dishwasher: "What is dissolved stays on glasses as spots when they dry.",
      dispenser: "People drink it as it comes: taste and cleanliness count most.",
      other: "What is dissolved stays behind where water dries or boils.",
    },
    care: {
      combiOven:
        "Descale when the oven asks, or when white crust shows; wipe the cavity dry at closing; empty the boiler as its manual says.",
      steamer:
        "Descale when the steamer asks, or when white crust shows; empty the boiler at closing as its manual says.",
      coffee: "Purge steam wand and groups daily; descale only as the manual says.",
      ice: "Empty and wipe the bin weekly; clean and sanitise as its manual says, twice a year at the least.",
      dishwasher: "Clean its filters daily; look at glasses for spots weekly.",
      dispenser: "Wipe the outlet daily with a clean cloth; run it for a minute after a weekend.",
      other: "Clean and descale as its manual says.",
    },
    checks: [
      "Daily: look under the unit for water.",
      "Weekly: when nobody draws water and the tank is full, the drain line is silent.",
      "Monthly: look at the gauge on the tank and the date on the cartridge; note both.",
      "Closed for more than two days: shut the unit's water, appliances off. Back again: run each tap five minutes to waste, throw away the first ice and the first batches.",
      "Closed for more than two weeks: ask for a shut-down and a restart by the technician.",
    ],
    dueBy: (part, day) => `${part}: ${day ? `by ${on(day)}` : "date not known"}`,
    dueNow: " (due)",
    nothingDue: "Nothing on record.",
    manualRules:
      "Intervals are common practice; the appliance's manual and local rules come first. Before cleaning: appliance off and cool. Never mix a chlorine cleaner with descaler or acid: poisonous gas.",
  },
};
