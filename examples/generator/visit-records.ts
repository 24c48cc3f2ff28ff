import { CAUSE_IDS, SEARCH } from "@tapside/diagnosis";
import type { FieldValue } from "@tapside/records";
import { dayAfter } from "./calendar.ts";
import type { VisitTruth } from "./life.ts";
import { type Random, randomOf } from "./random.ts";
import { type Reader, readAsFound, readAsLeft } from "./read.ts";
import { type Edit, kitchenPerson } from "./unit-records.ts";
import type { UnitTruth } from "./unit-truth.ts";

/** What the eye sees of a trouble. */
const SEEN: Readonly<Record<string, string>> = {
  checkValveFailed: "drainSilent",
  shutOffStuckOpen: "drainSilent",
  restrictorBlocked: "restrictor",
  restrictorTooBig: "restrictor",
  bypassOpen: "bypassValve",
  diaphragmRuptured: "tank",
};

const prefixed = (prefix: string, slots: Readonly<Record<string, FieldValue>>) =>
  Object.entries(slots).map(([slot, value]) => [`${prefix}${slot}`, value] as const);

/** Work after which the element is read again. */
const READ_AGAIN = ["replace:sediment", "replace:element", "replace:restrictor"];

/** The visit as it was written down, in one change. */
export function visitEdit(seed: string, unit: UnitTruth, visit: VisitTruth): Edit {
  const random = randomOf(seed, unit.key, visit.number, "read");
  const reader: Reader = {
    seed,
    technician: visit.technician,
    day: visit.day,
    random,
    scaleWrong: visit.found.troubles.some((one) => one.id === "meterScaleWrong"),
  };
  const asFound = readAsFound(unit, visit.foundPorts, visit.found.meterM3, reader);
  const asLeft = visit.done.some((one) => READ_AGAIN.includes(one))
    ? readAsLeft(unit, visit.leftPorts, { ...reader, scaleWrong: false })
    : {};
  const few =
    visit.kind === "filterOnly"
      ? ["feedTds", "deliveredTds", "waterMeter", "feedTemperature", "beforeFilterPressure"]
      : undefined;
  const kept = Object.fromEntries(Object.entries(asFound).filter(([slot]) => !few || few.includes(slot)));
  return {
    kind: "visit",
    record: visitId(unit, visit),
    day: visit.day,
    fields: {
      unit: `${unit.key}:unit`,
      point: `${unit.key}:point`,
      kind: visit.kind,
      startedAt: `${visit.day}T09:00:00Z`,
      endedAt: `${visit.day}T10:${30 + random.whole(0, 29)}:00Z`,
      closed: true,
      technician: visit.technician.name,
      ...answers(seed, unit, visit, random),
      ...work(visit),
      ...causes(seed, unit, visit),
      ...Object.fromEntries([...prefixed("reading:asFound:", kept), ...prefixed("reading:asLeft:", asLeft)]),
    },
  };
}

export const visitId = (unit: UnitTruth, visit: Pick<VisitTruth, "number">) =>
  `${unit.key}:visit${visit.number}`;

function answers(seed: string, unit: UnitTruth, visit: VisitTruth, random: Random): Edit["fields"] {
  const [name, role] = kitchenPerson(seed, unit.kitchen);
  const seen = [...new Set(visit.found.troubles.flatMap((one) => SEEN[one.id] ?? []))];
  const bypassed = visit.found.troubles.some((one) => one.id === "bypassed");
  const until = dayAfter(visit.day, random.whole(40, 150));
  const seal = String(random.whole(300, 899)).padStart(4, "0");
  const repaired = (item: string) =>
    !visit.left.troubles.some((one) => SEEN[one.id] === item) ? "corrected" : "left";
  return {
    "answer:inUse": bypassed ? "bypassed" : "inUse",
    ...(bypassed && { "answer:bypass": { name, role, decision: "keepBypassed", until, seal } }),
    ...(seen.length === 0 && { "answer:inspection": "asItShouldBe" }),
    ...Object.fromEntries(seen.map((item) => [`exception:${item}`, { state: repaired(item) }])),
    "answer:valvesAsLeft": {
      feed: "open",
      tank: "open",
      bypass: bypassed ? "open" : "shut",
      sample: "shut",
      ...(bypassed && { seal }),
    },
    "answer:filling": {
      state: random.chance(0.15) ? "seen" : "reported",
      expectedHours: Math.round(10 * visit.leftPorts.fillingHours) / 10,
    },
    "answer:signature": random.chance(0.87) ? { kind: "signed", name, role } : { kind: "notPresent" },
  };
}

/** Troubles that were mended and seen to be the cause; now and then nobody writes that down. */
function causes(seed: string, unit: UnitTruth, visit: VisitTruth): Edit["fields"] {
  const left = new Set(visit.left.troubles.map((one) => one.id));
  const mended = visit.found.troubles.flatMap(({ id }) =>
    left.has(id) ? [] : CAUSE_IDS.filter((cause) => cause === id),
  );
  if (mended.length === 0 || !randomOf(seed, unit.key, visit.number, "confirmed").chance(0.8)) return {};
  return {
    [`answer:${SEARCH.repaired}`]: mended,
    [`answer:${SEARCH.repairedAt}`]: mended.map(() => `${visit.day}T10:00:00Z`),
    [`answer:${SEARCH.found}`]: mended,
  };
}

function work(visit: VisitTruth): Edit["fields"] {
  const lot = visit.day.slice(2, 4) + visit.day.slice(5, 7);
  const done = visit.done.map((task) => [
    `work:${task}`,
    task === "setAirCharge"
      ? { state: "done", value: Math.round(2 * visit.left.chargePsi) / 2, unit: "psi" }
      : task.startsWith("replace:")
        ? { state: "done", lot }
        : { state: "done" },
  ]);
  const left = visit.waiting.map((task) => [
    `work:${task}`,
    { state: "left", reason: "part not in the van" },
  ]);
  const refused = visit.refused.map((task) => [`work:${task}`, { state: "left", reason: "advice refused" }]);
  return Object.fromEntries([...done, ...left, ...refused]);
}

/** Points left open, closed at a later visit or refused by a named person. */
export function openPointEdits(
  seed: string,
  unit: UnitTruth,
  visits: readonly VisitTruth[],
): readonly Edit[] {
  const [name, role] = kitchenPerson(seed, unit.kitchen);
  return visits.flatMap((visit, i) => {
    const point = (task: string, more: Edit["fields"], day: string): Edit => ({
      kind: "openPoint",
      record: `${visitId(unit, visit)}:work:${task}`,
      day,
      fields: more,
    });
    const opened = (task: string, detail: string) =>
      point(
        task,
        {
          unit: `${unit.key}:unit`,
          openedVisit: visitId(unit, visit),
          code: `work:${task}`,
          detail,
          owner: name,
        },
        visit.day,
      );
    const closed = (task: string) => {
      const closing = visits.slice(i + 1).find((later) => later.done.includes(task));
      return closing ? [point(task, { closedVisit: visitId(unit, closing) }, closing.day)] : [];
    };
    const waiting = visit.waiting.flatMap((task) => [opened(task, "part not in the van"), ...closed(task)]);
    const refused = visit.refused.flatMap((task) => [
      opened(task, "advised in writing"),
      point(task, { refusedBy: `${name}, ${role}` }, visit.day),
      ...closed(task),
    ]);
    return [...waiting, ...refused];
  });
}
