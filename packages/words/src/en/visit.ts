import { plainNumber } from "../plain-number.ts";
import type { VisitWords } from "../visit-words.ts";
import { writtenDay } from "../written-day.ts";

const on = writtenDay("en");

const listed = (items: readonly string[]) =>
  items.map((item) => item.charAt(0).toLowerCase() + item.slice(1)).join("; ");

/** Two significant digits: an upper bound from a guessed demand has no more. */
const rough = (value: number): string => plainNumber(Number(value.toPrecision(2)));

const mass = (grams: number): string => (grams >= 1000 ? `${rough(grams / 1000)} kg` : `${rough(grams)} g`);

export const visit: VisitWords = {
  checks: {
    complaint: {
      title: "What is wrong?",
      items: {
        noWater: "No water",
        weak: "Strong, then dies",
        drainRuns: "Drain runs all the time",
        leak: "Leak or wet floor",
        alarm: "Alarm of an appliance",
        taste: "Taste",
        smellChlorine: "Smells of pool",
        smellOther: "Other smell",
        cloudy: "Cloudy",
        ice: "Ice tastes, is cloudy or small",
        scale: "White scale",
        noise: "Noise",
      },
    },
    premises: {
      title: "The place",
      items: {
        coldOnly: "Cold drinking-water line, no hot water on it",
        isolation: "Isolation valve found and works",
        socket: "Socket in reach, off the floor, earth-fault protected",
        space: "Room for unit and tank, and to change cartridges",
        floor: "Floor or wall carries the full tank",
        drain: "Drain in reach with room for an air gap",
        floorDrain: "Floor drain or leak stop possible",
        frost: "Frost-free, below 35 °C",
        backflow: "Backflow device where code asks for one",
        access: "Access, hours and key agreed",
        photos: "Photos: wall, drain, socket, appliances",
      },
    },
    shown: {
      title: "Users shown, label hung",
      items: {
        isolation: "Isolation valve shown",
        bypass: "Bypass shown, and that it needs permission",
        leak: "What to do at a leak",
        heaters: "Appliance heaters off before the water is shut",
        firstWater: "First water and first ice are thrown away",
        label: "Label hung: date, number to call, next due",
      },
    },
  },
  reasons: {
    nobody: "Nobody there",
    noKey: "No key, no code",
    kitchenBusy: "Kitchen too busy to shut the water",
    closed: "Closed",
    unsafe: "Not safe to work",
    notFound: "Unit not found",
    called: "Called away",
  },
  steps: {
    hold: {
      title: "Hold the appliances",
      text: "Ice, coffee and steam too. Say for how long.",
    },
    toZero: {
      title: "Shut, pressure to zero",
      text: "Open the outlet until nothing comes.",
    },
    partsOut: { title: "Element and all cartridges out", text: "Post-filter too. Close the empty housings." },
    dose: {
      title: "Measure the sanitiser",
      text: "Strength stands on its label; so does what it may be used for.",
    },
    fillDosed: {
      title: "Dose, fill, run to every outlet",
      text: "Dose into the empty housing, feed on slowly, tank valve open, until it smells at each outlet.",
    },
    stripThere: {
      title: "Strip at the outlet: it is there",
      text: "Chlorine at the furthest outlet, before it stands.",
    },
    contact: { title: "Contact time", text: "By the product's label. 30 min is common practice, no source." },
    rinse: { title: "Drain and rinse", text: "Empty the tank, fill and empty again. Litres or times." },
    stripZero: {
      title: "Strip after: must read zero",
      text: "At the outlet and from the tank. Not zero: rinse again.",
    },
    partsIn: { title: "Cartridges back, carbon rinsed, then the element" },
    discard: { title: "First water away", text: "First water, ice bin, first batches." },
    release: { title: "Give the appliances back", text: "Tell the kitchen; take the sign down." },
    elementOut: { title: "Old element out", text: "Look at both ends: slime, scale, O-rings." },
    elementIn: {
      title: "New element in",
      text: "Brine seal the right way, O-rings wetted with water, serial or lot from its label.",
    },
    slowOn: { title: "Feed on slowly", text: "Bleed the air, look at every joint." },
    elementToWaste: {
      title: "Element to waste",
      text: "Permeate and drain to waste as the element's label says; 30 min is common practice, no source.",
    },
    swapCartridge: {
      title: "Old out, housing wiped, new in",
      text: "O-ring in its groove. Lot from the label.",
    },
    counterReset: { title: "Date written, counters reset" },
    lineToDrain: { title: "Carbon's outlet to the drain", text: "Off the element before the feed comes on." },
    carbonToDrain: { title: "Carbon runs to drain", text: "Until clear, at least what its label says." },
    lineBack: { title: "Line back to the element" },
    drainTank: { title: "Drain the tank", text: "Tap open, until it only drips." },
    tankOut: { title: "Old tank out" },
    airBeforeWater: { title: "Air charge before water", text: "Empty, tap open. Gauge for low pressure." },
    tankIn: { title: "New tank in", text: "Read its plate. Serial or lot from the label." },
    pumpAir: { title: "Air by hand pump", text: "Empty, tap open. Type the new charge next." },
    fillTank: { title: "Fill the tank" },
    emptyTank: { title: "Empty it away" },
    firstTank: { title: "First tank filled and thrown away" },
    flushLine: { title: "Run the cold line", text: "Past the unit, no spray, until it is cold." },
    drainOld: { title: "Old tank water away", text: "To drain, no spray. Nobody drinks it." },
    lookInside: {
      title: "Look inside",
      text: "Mould, slime, smell in housings. What stood wet is replaced.",
    },
    iceOut: { title: "Ice bin emptied, appliance lines run off" },
    elementKept: {
      title: "Element: as its label says",
      text: "Kept wet and cool, in preservative, or out. Dry standing spoils it.",
    },
    powerOff: { title: "Booster and UV unplugged" },
    labelHung: { title: "Label hung", text: "Shut down on …, not to be used before restart." },
    takeOff: { title: "Unit and tank off" },
    capLines: {
      title: "Lines capped at the branch",
      text: "Feed, outlet, drain. Kitchen water back on, no drip.",
    },
    disposeOld: { title: "Old parts taken along" },
    stickerOff: { title: "Sticker taken off; the history stays" },
  },
  waits: {
    tankDraining: "Tank draining",
    toWaste: "To waste",
    carbonRinse: "Carbon rinse",
    contact: "Contact time",
    filling: "Filling",
    rinse: "Rinse",
    flush: "Line flush",
  },
  authorities: {
    owner: "owner",
    tenant: "tenant",
    headOffice: "head office",
    keyHolder: "in charge of this shift",
  },
  titles: { thisVisit: "This visit", stepByStep: "Work, step by step" },
  says: {
    baseline: "Baseline of this unit, provisional: a new element settles over days.",
    surveyDone: "Survey of the place before an installation.",
    labelGoverns: "The product's label, the appliance's manual and local code go before what stands here.",
    stripNotWritten: "Strip after the rinse: not written down",
  },
  noAccess: (reason, time, note) =>
    [`${visit.reasons[reason] ?? reason}, ${time}`, note].filter(Boolean).join(": "),
  times: (from, to, minutes) =>
    [`Arrived ${from}${to ? `, left ${to}` : ""}`, minutes !== undefined && `${minutes} min worked`]
      .filter(Boolean)
      .join("; "),
  counter: (name, value, unit, perDay, since) =>
    `${name}: counter ${value} ${unit}${perDay === undefined ? "" : `, ${Number(perDay.toPrecision(2))} ${unit} a day since ${on(since)}`}`,
  noLeakPhoto: (reason) => `No photo of the leak before it was touched: ${reason}`,
  others: (names) => `Also there: ${names}`,
  ticked: (title, items) => `${title.replace(/\?$/, "")}: ${listed(items)}`,
  notSo: (title, items) => `${title}, not so: ${listed(items)}`,
  inWords: (note) => `“${note}”`,
  drips: ({ minutes, pressure, unit, seen }) =>
    `${seen === "none" ? "No drip" : "Drip"} seen during ${plainNumber(minutes)} min${pressure === undefined ? "" : ` at ${plainNumber(pressure)} ${unit ?? ""}`}`.trim(),
  acceptance: ({ name, role, decision, note }) =>
    `${{ accepted: "Accepted", withReserve: "Accepted with reserve", refused: "Not accepted" }[decision]} by ${[name, role].filter(Boolean).join(", ")}${note ? `: ${note}` : ""}`,
  dose: (target, litres, strength, ml) =>
    `${plainNumber(target)} mg/L × ${plainNumber(Number(litres.toPrecision(3)))} L ÷ ${plainNumber(strength)} g/L = ${plainNumber(Number(ml.toPrecision(3)))} mL`,
  step: (title, { value, unit, notDetected, minutes, text, from }) => {
    const { targetMgPerL, litres, strengthGPerL } = from ?? {};
    const sum =
      value !== undefined && targetMgPerL !== undefined && litres !== undefined && strengthGPerL !== undefined
        ? visit.dose(targetMgPerL, litres, strengthGPerL, value)
        : value !== undefined &&
          (notDetected
            ? `nothing seen, step ${plainNumber(value)} ${unit ?? ""}`.trim()
            : `${plainNumber(value)} ${unit ?? ""}`.trim());
    return [title, sum, minutes !== undefined && `${minutes} min`, text].filter(Boolean).join(", ");
  },
  advice: ({ detail, owner, due, agreed, byPhone, refusedBy, refusedRole, refusedWords }) => {
    const decision = refusedBy
      ? `refused by ${[refusedBy, refusedRole].filter(Boolean).join(", ")}${refusedWords ? `: “${refusedWords}”` : ""}`
      : `${agreed === "accepted" ? "accepted" : "not decided"}, ${owner ?? "nobody named"}`;
    return `Advised${byPhone ? " by telephone" : ""}: ${detail ?? ""}; ${decision}${due ? `, by ${on(due)}` : ""}`;
  },
  bypassSoFar: (since, days, litresPerDay, scaleG) =>
    `Water past the unit since ${on(since)}, ${days} days. ${
      litresPerDay === undefined || scaleG === undefined
        ? "Upper bound of scale cannot be told: hardness or litres a day are missing."
        : `If about ${rough(litresPerDay)} L/day, at most ${mass(scaleG)} of scale so far; estimate.`
    }`,
};
