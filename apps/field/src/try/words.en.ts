import type { Leak, ScaleMineral, Season } from "@tapside/reverse-osmosis";
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
  standing: "After standing",
  standingHint: "salt creep, the first water, how much to let run",
  stood: { 2: "Break", 10: "Night", 60: "Weekend", 400: "Holiday" } as Readonly<
    Record<2 | 10 | 60 | 400, string>
  >,
  firstWater: "First water at the sample valve",
  firstPpm: "first water, ppm",
  letRun: (litres: string, minutes: string) => `Let ${litres} run, ${minutes}, before judging.`,
  nothingToLetRun: "Nothing need run before judging.",
  creep:
    "While nothing flows, salt creeps through the membrane. How much water it holds is known to about a factor of two.",
  min: (v: string) => `${v} min`,
  leak: "A leak at night",
  leakHint: "starts, water to the drain, first water in the morning",
  leakAt: { tap: "A tap drips", checkValve: "Check valve leaks" } as Readonly<Record<Leak["at"], string>>,
  leakSeen: {
    tap: "at a tap or fill valve behind the tank",
    checkValve: "at the drain, tank full and shut off",
  } as Readonly<Record<Leak["at"], string>>,
  leaks: "It leaks",
  drops: (perMin: number) => `${perMin} drops a minute`,
  starts: (times: string) =>
    times === "0" ? "It does not start in the night" : `It starts ${times} times in ten hours`,
  toDrain: (litres: string) => `${litres} to the drain`,
  nothingToDrain: "nothing to the drain",
  atTap: (litres: string) => `${litres} at the tap`,
  neverStops: "It does not stop all night",
  morning: (first: string, sound: string) =>
    first === sound
      ? `First water from the tank ${first}, as without the leak.`
      : `First water from the tank ${first}, without the leak ${sound}.`,
  tankLitres: "in the tank, L",
  drainLitres: "to the drain, L",
  evening: "evening",
  leakCare:
    "Thin and dashed: without the leak. Twenty drops are about a millilitre. How far a shut-off lets the tank fall is known to about half: so its starts are.",
  restrictorWanted: "A wanted recovery",
  restrictorWantedHint: "its restrictor, winter and summer, without scale",
  wantedRecovery: "Recovery",
  seasons: { winter: "Winter", summer: "Summer" } as Readonly<Record<Season, string>>,
  restrictorAt: (psi: string) => `Restrictor, at ${psi} psi`,
  mLPerMin: (v: string) => `${v} mL/min`,
  recoveryIn: (season: string, water: string) => `${season}, ${water}`,
  heldByScale: (wanted: string, restrictor: string) =>
    `Kept below scale. ${wanted} would take ${restrictor}.`,
  minerals: {
    calcite: "calcite",
    gypsum: "gypsum",
    fluorite: "fluorite",
    amorphousSilica: "silica",
  } as Readonly<Record<ScaleMineral, string>>,
  scaleFrom: (mineral: string, recovery: string) => `${mineral} may settle above ${recovery}`,
  noScale: (recovery: string) => `nothing settles up to ${recovery}`,
  inhibitorNotSaid:
    "A scale inhibitor is fitted; its label's saturation index is not in the record, so it cannot be told what it holds back. Not kept below scale; without it:",
  inhibitorHolds: (index: string) =>
    `Calcite to a saturation index of ${index}, as the scale inhibitor's label says, while it is not used up; other minerals to 0.`,
  restrictorCare:
    "With the tank empty. Scale is told to about ± 5 points and needs time to settle. Close the feed and let the pressure off before changing a restrictor.",
  beyondLaminar:
    "The capillary works beyond its laminar range: away from what was read its flow is told to ±\u00a020\u00a0%.",
  estimate:
    "Estimate from the model: about ± 12 % in time, ± 20 % in ppm. Pressure above the plate needs a reducing valve.",
};
