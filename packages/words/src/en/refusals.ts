import type { Messages } from "../messages.ts";
import { refusedLists } from "./refused-lists.ts";
import { refusedTables } from "./refused-tables.ts";
import { refusedWaters } from "./refused-waters.ts";
import type { Said } from "./said.ts";

/** Why something cannot be calculated or taken, by its code. */
export const refusalTexts: Readonly<Record<string, Said>> = {
  ...refusedWaters,
  ...refusedTables,
  ...refusedLists,
  "nothing-typed": "Type a number.",
  "dose-needs": "A dose needs the chlorine wanted, the litres and the strength, each above zero.",
  "dose-too-strong": ({ mostMgPerL }) =>
    `More than ${mostMgPerL} mg/L is no sanitising dose: a slip of the decimal sign?`,
  "product-too-weak": "The product is weaker than what is wanted.",
  "heater-needs-power": "Type the heater's power in kW.",
  "carbon-needs-rating": "The carbon's rated litres and the chlorine they are rated at are needed.",
  "carbon-needs-chlorine": "Without chlorine in the feed its litres cannot be told.",
  "carbon-needs-litres": "Litres of carbon and of permeate a day must be above zero.",
  "below-scald-table": "Below 49 °C no time is printed. That does not say it is safe.",
  "scale-needs-amounts": "Hardness, litres and days cannot be below zero.",
  "two-decimal-marks": "Only one comma or point; leave out the mark for thousands.",
  "not-a-number": ({ text, name, input }) =>
    text === undefined
      ? `${input ?? "This"} is not a number.`
      : `${name === undefined ? "" : `${name}: `}"${text}" is not a number: digits and one comma or point.`,
  "too-long": "Too many digits for a reading.",
  "unit-not-for-slot": ({ unit }) => `${unit} does not fit here.`,
  "cup-needs-volume": "Choose the cup first.",
  "text-has-nul": "This text holds a sign that cannot be kept. Rub it out.",
  "text-has-half-character": "This text holds half a sign. Rub it out and write it again.",
  "number-not-finite": "That is not a number.",
  "no-such-visit": "There is no such visit in this file.",
  "file-empty": "The file is empty. Choose the one that was exported.",
  "file-foreign": "This file was not written by Tapside. Nothing was taken in.",
  "file-newer": "A newer version wrote this file. Take the new version first; nothing was taken in.",
  "file-truncated": "The file ends too early. Copy it again; nothing was taken in.",
  "file-altered": "The file was changed after it was written. Nothing was taken in.",
  "file-broken": ({ line }) => `Line ${line} of the file cannot be read. Nothing was taken in.`,
  "change-newer": "A newer version wrote this. Take the new version first.",
  "id-reused": "The file disagrees with this book about one entry. Nothing was taken in.",
  "storage-refused": "This phone refuses to keep it. Export now.",
  "not-a-photo": "A photo in the file cannot be read. Nothing was taken in.",
  "not-a-change": "A line of the file is no entry of a book. Nothing was taken in.",
  "pdf-failed": "The PDF could not be made. The record itself is kept.",
  "record-altered": "The record was changed after it was frozen.",
  "record-broken": "The record cannot be read.",
  "not-a-finite-number": "That is not a number.",
  "unit-unknown": ({ unit }) =>
    unit === undefined ? "This unit is not known." : `"${unit}" is no unit known here.`,
  "units-differ-in-kind": ({ from, fromKind, to, toKind }) =>
    from === undefined
      ? "These units measure different things."
      : `${from} measures ${fromKind}, ${to} measures ${toKind}: choose two of one kind.`,
  "feed-not-above-zero": "Feed TDS must be above zero.",
  "permeate-not-below-feed": "Permeate is not below feed: are the samples swapped?",
  "permeate-not-to-waste": "Read with permeate to waste, not at the tank.",
  "first-water-not-discarded": "First water after standby: run it off, read again.",
  "temperature-out-of-range": ({ lowC = 1, highC = 45 }) =>
    `Water temperature is outside ${lowC} to ${highC} °C.`,
  "not-positive": ({ name }) => `${name ?? "This reading"} must be above zero.`,
  "no-net-driving-pressure": "Pressure is too low to drive water through the membrane.",
  "mixed-temperature-forms": "Readings were corrected by different temperature forms.",
  "nothing-drawn": "No water was drawn.",
  "pressure-did-not-fall": "The tank gauge did not fall while water was drawn.",
  "tank-emptied": "The tank gauge fell to zero: draw less, or set the charge empty.",
  "more-gas-than-tank": "More gas than the tank has room for: check gauge and litres.",
  "minimum-above-full": "The appliance needs more pressure than the full tank has.",
  "no-tank": "There is no tank.",
  "no-use": "Nothing is told of what the kitchen takes.",
  "makes-too-little": "No tank helps: a day's use is more than a day makes.",
  "hour-of-day": ({ hour }) => `${hour} is no hour of the day: 0 to 24.`,
  "vented-tank": "The tank is vented.",
  "permeate-pump-untrained":
    "The likely causes were never worked out for a unit with a permeate pump: no odds.",
  "never-shuts-off": "The shut-off would never close.",
  "shut-off-below-air-charge": "The air charge is above the shut-off pressure: the tank cannot fill.",
  "tank-above-feed": "The tank stands above the feed: nothing flows.",
  "no-flow": "Nothing flows at this pressure.",
  "no-element": "The unit has no element.",
  "no-root": "These parts and pressures give no working point: check the restrictor and the nameplate.",
  "unknown-temperature-form": ({ text }) => `"${text}" is no temperature form known here.`,
  "out-of-range": ({ name, low, high, unit, rangeUnit }) => {
    if (low === undefined) return "A reading is outside what can be calculated.";
    return name === undefined
      ? `Hardly possible: ${low} to ${high} ${rangeUnit ?? unit} can be.`
      : `${name} must lie between ${low} and ${high}.`;
  },
  "leak-above-membrane": ({ mLPerMin }) =>
    `The membrane lets no more than ${mLPerMin} mL/min back: what drains more comes another way, by a shut-off that stays open say.`,
  "line-takes-too-much": ({ kPa }) =>
    `Such a line takes ${kPa} kPa of a litre a minute, more than a unit works with: check bore and length. It is not counted.`,
  "readings-too-uncertain": "Here the readings are too uncertain to tell.",
  "nameplate-incomplete": "The nameplate is incomplete.",
  "nameplate-rejection": "The nameplate's rejection is outside 20 to 100 %.",
  "nameplate-recovery": "Drain flow is too small beside permeate flow.",
  "nameplate-contradictory": "These flows and pressures contradict each other.",
  "no-reference-salt": "The reference shows no salt to compare with.",
  "not-computable": "These readings give no sensible figure.",
  "filling-time-out-of-range": "No element of this unit could fill the tank in that time.",
  "no-such-restrictor": "No restrictor gives this recovery here.",
  "feed-already-scales": ({ mineral }) =>
    `The feed lays down ${mineral ?? "scale"} by itself: no recovery is free of scale.`,
  "meter-went-back": "The water meter went back: new meter?",
};

export const refusal: Messages["refusal"] = ({ code, detail = {} }) => {
  const said = refusalTexts[code];
  if (said === undefined) return `Not possible: ${code.replaceAll("-", " ")}.`;
  return typeof said === "string" ? said : said(detail);
};
