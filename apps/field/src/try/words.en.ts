import type { KnobId, PartId } from "./change.ts";

/** What the page of changes says. */
export const tryEn = {
  open: "Try a change",
  title: "Try a change",
  asItIs: "As it is",
  asItIsHint: "back to what was read",
  unit: "Unit",
  from: (day: string) => `as read ${day}`,
  fromNameplate: "as its nameplate says",
  knobs: { water: "Water", feed: "Feed", charge: "Charge", restrictor: "Restrictor" } as Readonly<
    Record<KnobId, string>
  >,
  parts: { tank: "Second tank", element: "New element", booster: "Booster" } as Readonly<
    Record<PartId, string>
  >,
  withoutBooster: "Without booster",
  value: {
    water: (v: string) => `${v} °C`,
    feed: (v: string) => `${v} psi`,
    charge: (v: string) => `${v} psi`,
    restrictor: (v: string) => `× ${v}`,
  } as Readonly<Record<KnobId, (v: string) => string>>,
  less: (knob: string) => `${knob}: less`,
  more: (knob: string) => `${knob}: more`,
  now: "now",
  changed: "changed",
  instead: (a: string, b: string) => (a === b ? `${a}, as now` : `${a}, now ${b}`),
  hours: "Full in",
  litres: (psi: string | undefined) => (psi ? `Above ${psi} psi` : "From the tank"),
  delivered: "Delivered",
  filling: "Filling",
  tank: "Tank",
  element: "Along the element",
  flow: "flow, L/min",
  pressure: "tank, psi",
  flux: "flux, L/m²h",
  permeate: "permeate, ppm",
  feedEnd: "feed end",
  drainEnd: "drain end",
  empty: "empty",
  h: (v: string) => `${v} h`,
  L: (v: string) => `${v} L`,
  ofL: (v: string) => `of ${v} L`,
  usable: (v: string) => `${v} L usable`,
  ppm: (v: string) => `${v} ppm`,
  estimate:
    "Estimate from the model: about ± 12 % in time, ± 20 % in ppm. Pressure above the plate needs a reducing valve.",
};
