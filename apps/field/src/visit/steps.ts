import type { Assessment } from "@tapside/assessment";
import type { KeptVisit, Phase, PortId, SlotId, UnitFile } from "@tapside/records";
import { absentPorts, SLOTS, withHourCounter } from "@tapside/records";

import { PLANS, type PlanItem, slotsAsked } from "./plans.ts";

/** One thing the visit asks of the hands: where it is done, and whether it is. */
export interface Step {
  readonly id: string;
  /** Under `/visit/:id/`. */
  readonly path: string;
  readonly done: boolean;
  /** A number is read: gets a tick of its own. */
  readonly reading?: { readonly phase: Phase; readonly slot: SlotId };
}

/** Whether the unit has the port where this slot is read. */
function hasPort(file: UnitFile, slot: SlotId): boolean {
  const absent: readonly PortId[] = absentPorts(file.unit);
  return !absent.includes(SLOTS[slot].port);
}

/** At 100 ppm or less on the meter's own scale an RO unit is optional (common practice, no source). */
const OPTIONAL_AT_PPM = 100;

function isOptional(visit: KeptVisit): boolean {
  const feed = visit.readings.asFound.feedTds;
  return feed?.value != null && feed.unit === "ppm" && feed.value <= OPTIONAL_AT_PPM;
}

/** All steps of a visit in the order of hands. Any of them can be taken at any time; a visit broken off keeps what was done. */
export function stepsOf(file: UnitFile, visit: KeptVisit, assessment: Assessment): readonly Step[] {
  const planned = PLANS[visit.kind ?? "annual"].flatMap((item) =>
    item.kind === "read"
      ? [...readingSteps(item, file, visit), ...counterSteps(item, file, visit)]
      : onceSteps(item.id, file, visit, assessment),
  );
  const steps = withReadBeside(planned, visit);
  if (!visit.answers.noAccess || visit.kind === "noAccess") return steps;
  const broken: Step = { id: "noAccess", path: "noAccess", done: true };
  return [...steps.filter((step) => step.done && step.id !== "record"), broken, ...steps.slice(-1)];
}

/** What was read without being asked for stands before the first reading of its phase, so that the order of hands goes on after it. */
function withReadBeside(planned: readonly Step[], visit: KeptVisit): readonly Step[] {
  return (["asFound", "asLeft"] as const).reduce((steps, phase) => {
    const beside = (Object.keys(visit.readings[phase]) as SlotId[])
      .filter((slot) => slot !== "drawnVolume" && !steps.some((step) => step.id === `read:${phase}:${slot}`))
      .map((slot) => readingStep(phase, slot, visit));
    const first = steps.findIndex((step) => step.reading?.phase === phase);
    const at =
      first < 0
        ? Math.max(
            0,
            steps.findIndex((step) => step.id === "valves"),
          )
        : first;
    return [...steps.slice(0, at), ...beside, ...steps.slice(at)];
  }, planned);
}

function readingSteps(item: Extract<PlanItem, { kind: "read" }>, file: UnitFile, visit: KeptVisit): Step[] {
  if (item.afterWork && !Object.values(visit.work).some((work) => work.state === "done")) return [];
  return withHourCounter(slotsAsked(item, visit), file)
    .filter((slot) => hasPort(file, slot))
    .flatMap((slot) => {
      const step = readingStep(item.phase, slot, visit);
      return slot === "feedTds" && isOptional(visit) ? [step, optionalStep(visit)] : [step];
    });
}

function readingStep(phase: Phase, slot: SlotId, visit: KeptVisit): Step {
  const reading = visit.readings[phase][slot];
  return {
    id: `read:${phase}:${slot}`,
    path: `read/${phase}/${slot}`,
    done: reading !== undefined || visit.skipped.includes(`${phase}:${slot}`),
    reading: { phase, slot },
  };
}

/** The appliances' own counters are read after the water meter, where any has one. */
function counterSteps(item: Extract<PlanItem, { kind: "read" }>, file: UnitFile, visit: KeptVisit): Step[] {
  if (!item.slots.includes("waterMeter") || !file.appliances.some((one) => one.counter)) return [];
  return [{ id: "counters", path: "counters", done: visit.answers.counters !== undefined }];
}

const optionalStep = (visit: KeptVisit): Step => ({
  id: "optional",
  path: "optional",
  done: visit.answers.roOptional !== undefined,
});

function onceSteps(id: string, file: UnitFile, visit: KeptVisit, assessment: Assessment): Step[] {
  const { answers } = visit;
  switch (id) {
    case "complaint":
    case "premises":
    case "shown":
      return [{ id, path: `check/${id}`, done: answers[id] !== undefined }];
    case "drips":
    case "acceptance":
    case "noAccess":
      return [{ id, path: id, done: answers[id] !== undefined }];
    case "ask": {
      const ask: Step = { id, path: "ask", done: answers.inUse !== undefined };
      const points = pointsSteps(file, visit);
      if (answers.inUse !== "bypassed") return [ask, ...points];
      return [ask, { id: "bypass", path: "bypass", done: answers.bypass !== undefined }, ...points];
    }
    case "look":
      return [
        {
          id,
          path: "look",
          done: answers.inspection !== undefined || Object.keys(visit.exceptions).length > 0,
        },
      ];
    case "work":
      return workSteps(visit, assessment);
    case "valves":
      return [{ id, path: "valves", done: answers.valvesAsLeft !== undefined }];
    case "sign":
      return [{ id, path: "sign", done: answers.signature !== undefined }];
    case "leave":
      return [{ id, path: "leave", done: answers.filling !== undefined }];
    case "record":
      return [{ id, path: "record", done: visit.closed === true }];
    default:
      return [{ id, path: id, done: isJudged(visit) }];
  }
}

/** Points left open earlier come back, each until it is closed, refused by a named person or kept with a reason. */
function pointsSteps(file: UnitFile, visit: KeptVisit): Step[] {
  const [open, settled] = [file.openPoints, file.settledPoints].map((points) =>
    points.filter((point) => point.openedVisit !== visit.id),
  );
  const here = settled!.some((one) => one.closedVisit === visit.id || one.refusedVisit === visit.id);
  if (open!.length === 0 && !here) return [];
  return [{ id: "points", path: "points", done: open!.every((one) => one.keptVisit === visit.id) }];
}

/** The judgement was gone on from: work was answered, or, where the work comes first, what follows it. */
const isJudged = (visit: KeptVisit): boolean =>
  visit.kind === "commissioning" ? visit.answers.drips !== undefined : Object.keys(visit.work).length > 0;

/** Proposed work, and work already answered that is no longer proposed once it is done. */
function workSteps(visit: KeptVisit, assessment: Assessment): Step[] {
  const proposed = assessment.tasks.map((task) => task.id);
  const answered = Object.keys(visit.work).filter((id) => !proposed.includes(id));
  return [...answered, ...proposed].map((task) => ({
    id: `work:${task}`,
    path: `work/${encodeURIComponent(task)}`,
    done: visit.work[task] !== undefined,
  }));
}

/** The next thing for the hands after `id`: the next undone step below it, else the first undone, else the last. */
export function nextStep(steps: readonly Step[], id: string): Step {
  const here = steps.findIndex((step) => step.id === id);
  const open = (step: Step) => !step.done && step.id !== id;
  return steps.slice(here + 1).find(open) ?? steps.find(open) ?? steps.at(-1)!;
}
