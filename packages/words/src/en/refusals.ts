import type { Messages } from "../messages.ts";

const TEXTS: Readonly<Record<string, string>> = {
  "unit-unknown": "This unit is not known.",
  "units-differ-in-kind": "These units measure different things.",
  "feed-not-above-zero": "Feed TDS must be above zero.",
  "permeate-not-below-feed": "Permeate is not below feed: are the samples swapped?",
  "permeate-not-to-waste": "Read with permeate to waste, not at the tank.",
  "first-water-not-discarded": "First water after standby: run it off, read again.",
  "temperature-out-of-range": "Water temperature is outside 1 to 45 °C.",
  "not-positive": "This reading must be above zero.",
  "no-net-driving-pressure": "Pressure is too low to drive water through the membrane.",
  "mixed-temperature-forms": "Readings were corrected by different temperature forms.",
  "nothing-drawn": "No water was drawn.",
  "pressure-did-not-fall": "The tank gauge did not fall while water was drawn.",
  "tank-emptied": "The tank gauge fell to zero: draw less, or set the charge empty.",
  "more-gas-than-tank": "More gas than the tank has room for: check gauge and litres.",
  "minimum-above-full": "The appliance needs more pressure than the full tank has.",
  "no-tank": "There is no tank.",
  "vented-tank": "The tank is vented.",
  "never-shuts-off": "The shut-off would never close.",
  "shut-off-below-air-charge": "The air charge is above the shut-off pressure: the tank cannot fill.",
  "tank-above-feed": "The tank stands above the feed: nothing flows.",
  "no-flow": "Nothing flows at this pressure.",
  "out-of-range": "A reading is outside what can be calculated.",
  "nameplate-incomplete": "The nameplate is incomplete.",
  "nameplate-rejection": "The nameplate's rejection is outside 20 to 100 %.",
  "nameplate-recovery": "Drain flow is too small beside permeate flow.",
  "nameplate-contradictory": "These flows and pressures contradict each other.",
  "no-reference-salt": "The reference shows no salt to compare with.",
  "not-computable": "These readings give no sensible figure.",
  "meter-went-back": "The water meter went back: new meter?",
};

export const refusal: Messages["refusal"] = ({ code }) =>
  TEXTS[code] ?? `Not possible: ${code.replaceAll("-", " ")}.`;
