import {
  allKnown,
  converted,
  known,
  mapOutcome,
  type Outcome,
  propagate,
  type Uncertain,
} from "@tapside/quantities";
import type { SlotId, UnitFile } from "@tapside/records";
import { naclOsmoticPressureKPa } from "@tapside/reverse-osmosis";
import type { Figure, Finding } from "./assessment.ts";
import { pressureUnitOf } from "./figures.ts";
import { membranePressure } from "./from-records.ts";
import { amountOf, type PhaseReadings, usable } from "./internal/amounts.ts";
import { note, type Scene } from "./internal/scene.ts";
import { judge } from "./judge.ts";
import { rulesOf } from "./limits.ts";

/** What the readings say that are taken only when wanted: each finding is there only if its reading is. */
export const furtherFindings = (scene: Scene): readonly Finding[] => [
  ...drainWithFeedClosed(scene),
  ...drainWithTankFull(scene),
  ...afterPostFilter(scene),
  ...firstDraw(scene),
  ...meterCheck(scene),
  ...doubted(scene),
];

const perMinute = (outcome: Outcome<Uncertain>): Outcome<Figure> =>
  mapOutcome(outcome, ({ value, u }) => known<Figure>({ value: value / 60, u: u / 60, unit: "L/min" }));

const flow = (slot: SlotId, { readings, file }: Scene) => perMinute(amountOf(slot, readings, file));

/** Feed closed, tank full: what still runs to the drain comes back from the tank, through the check valve and the element. */
function drainWithFeedClosed(scene: Scene): Finding[] {
  const leak = flow("drainFlowFeedClosed", scene);
  if (leak.kind !== "known") return [];
  const own = backwardLPerMin(scene.readings, scene.file);
  const detail = { pattern: "checkValve", ...(own !== undefined && { elementPasses: own }) };
  const found = judge("drainFeedClosed", scene.phase, leak, rulesOf(scene.context).silentDrain, 86, {
    action: "replace:checkValve",
    detail,
  });
  return [found.verdict === "outside" ? found : { ...found, detail: {} }];
}

/**
 * What the element would let through backwards at the tank's pressure, if it let water through alike both ways, L/min.
 * Formula: Qp P_tank / (P − π_feed)
 */
function backwardLPerMin(readings: PhaseReadings, file: UnitFile): number | undefined {
  const needs = allKnown({
    permeate: amountOf("permeateFlow", readings, file),
    tank: amountOf("tankFullPressure", readings, file),
    pressure: membranePressure(readings, file),
    feed: amountOf("feedTds", readings, file),
    temperature: amountOf("feedTemperature", readings, file),
  });
  if (needs.kind !== "known") return undefined;
  const { permeate, tank, pressure, feed, temperature } = needs.value;
  const osmotic = naclOsmoticPressureKPa(feed.value, temperature.value);
  const driving = pressure.value - osmotic;
  return driving > 0 ? (permeate.value * tank.value) / driving / 60 : undefined;
}

/** Tank full: the drain is silent when the shut-off closes and nothing comes back. The feed tells which of the two it is. */
function drainWithTankFull(scene: Scene): Finding[] {
  const running = flow("drainFlowTankFull", scene);
  if (running.kind !== "known") return [];
  const rule = rulesOf(scene.context).silentDrain;
  const closed = flow("drainFlowFeedClosed", scene);
  const stops = closed.kind === "known" && closed.value.value <= rule.high;
  const pattern = closed.kind !== "known" ? "closeFeedToTell" : stops ? "shutOff" : "checkValve";
  const action = { shutOff: "replace:shutOff", checkValve: "replace:checkValve" }[pattern as "shutOff"];
  const found = judge("drainTankFull", scene.phase, running, rule, 84, {
    ...(action && { action }),
    detail: { pattern },
  });
  return [found.verdict === "outside" ? found : { ...found, detail: {} }];
}

function afterPostFilter(scene: Scene): Finding[] {
  const { readings, file, phase, context } = scene;
  const unit = pressureUnitOf(context);
  const ends = allKnown({
    tank: amountOf("tankFullPressure", readings, file),
    after: amountOf("postFilterPressure", readings, file),
  });
  const drop = mapOutcome(ends, ({ tank, after }) =>
    known<Figure>({
      value: converted(tank.value - after.value, "kPa", unit),
      u: converted(Math.hypot(tank.u, after.u), "kPa", unit),
      unit,
    }),
  );
  return [
    ...note("postFilterDrop", phase, drop),
    ...note("deliveredFlow", phase, flow("deliveredFlow", scene)),
  ];
}

/** Standing water takes up salt through the membrane: the first draw against the water after it. */
function firstDraw({ readings, file, phase }: Scene): Finding[] {
  const both = allKnown({
    first: amountOf("firstDrawTds", readings, file),
    later: amountOf("deliveredTds", readings, file),
  });
  const ratio = mapOutcome(both, ({ first, later }) => {
    const share = propagate(([f, l]) => f! / l!, [first, later]);
    return Number.isFinite(share.value) && Number.isFinite(share.u)
      ? known<Figure>({ ...share, unit: "× delivered" })
      : ({ kind: "missing", missing: ["deliveredTds"] } as const);
  });
  return note("firstDraw", phase, ratio);
}

/** Standard solutions of the trade: potassium chloride 0.01 mol/kg is 1413 µS/cm at 25 °C (ISO 7888); 342 ppm by common practice. */
const STANDARD = { "µS/cm": 1413, ppm: 342 } as const;
const SOLUTION_PERCENT = 0.5;
const METER_PERCENT = 3;

/** The meter in a standard solution: how far off it reads, against what its record states. */
function meterCheck({ readings, file, phase }: Scene): Finding[] {
  const reading = readings.standardSolution;
  if (!usable(reading)) return [];
  const nominal = STANDARD[reading.unit as keyof typeof STANDARD] ?? STANDARD.ppm;
  const instrument = file.instruments.get(reading.instrument ?? "");
  const step = (100 * (instrument?.resolution ?? 1)) / nominal / Math.sqrt(12);
  const off = 100 * (reading.value / nominal - 1);
  const allowed = instrument?.accuracyPercentOfReading ?? METER_PERCENT;
  return [
    judge(
      "meterCheck",
      phase,
      known({ value: off, u: Math.hypot(SOLUTION_PERCENT, step), unit: "%" }),
      {
        low: -allowed,
        high: allowed,
        unit: "%",
        source: instrument?.accuracyPercentOfReading ? "instrument" : "officeRule",
      },
      58,
      { detail: { nominal, nominalUnit: reading.unit } },
    ),
  ];
}

/** Readings the technician does not trust: kept, and said to be left out. */
function doubted({ visit, phase }: Scene): Finding[] {
  const slots = doubtfulSlots(visit.readings[phase]);
  if (slots.length === 0) return [];
  return [
    {
      id: "doubtful",
      phase,
      verdict: "information",
      consequence: 40,
      detail: { slots: slots.join(" ") },
    },
  ];
}

export const doubtfulSlots = (readings: PhaseReadings): readonly SlotId[] =>
  (Object.keys(readings) as SlotId[]).filter((slot) => readings[slot]?.doubtful === true).sort();
