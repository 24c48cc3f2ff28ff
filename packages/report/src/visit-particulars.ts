import { applianceUse } from "@tapside/book";
import { bypassSoFar, procedureOf } from "@tapside/procedures";
import type { KeptVisit, StepDone, UnitFile } from "@tapside/records";
import type { Messages } from "@tapside/words";
import type { Block } from "./block.ts";

/** What is peculiar to this visit: why nobody got in, who was there and when, lists gone through, procedures step by step. */
export function visitParticulars(
  file: UnitFile,
  visit: KeptVisit,
  words: Messages,
  when: { readonly timeZone: string; readonly issuedAt: string },
): Block[] {
  const { titles } = words.visit;
  return [
    { kind: "list", title: titles.thisVisit, items: thisVisit(file, visit, words, when) },
    { kind: "list", title: titles.stepByStep, items: stepLines(visit, words) },
  ];
}

function thisVisit(
  file: UnitFile,
  visit: KeptVisit,
  words: Messages,
  { timeZone, issuedAt }: { readonly timeZone: string; readonly issuedAt: string },
): string[] {
  const { noAccess, times, others, drips, acceptance } = visit.answers;
  const said = words.visit;
  const time = (iso: string | undefined) =>
    iso
      ? new Date(iso).toLocaleTimeString(words.record.locale, {
          hour: "2-digit",
          minute: "2-digit",
          timeZone,
        })
      : "";
  const arrived = times?.arrivedAt ?? visit.startedAt;
  const bypass = bypassSoFar(file, visit, issuedAt.slice(0, 10));
  return [
    ...(noAccess ? [said.noAccess(noAccess.reason, time(noAccess.at), noAccess.note ?? "")] : []),
    ...(times ? [said.times(time(arrived), time(times.leftAt ?? visit.endedAt), times.minutes)] : []),
    ...(others ? [said.others(others.names)] : []),
    ...(file.site.copiesTo ? [words.record.copiesTo(file.site.copiesTo)] : []),
    ...(["complaint", "premises", "shown"] as const).flatMap((check) => ticked(check, visit, words)),
    ...(visit.answers.leakPhoto ? [said.noLeakPhoto(visit.answers.leakPhoto.reason)] : []),
    ...(visit.answers.counters
      ? applianceUse(file, visit.id)
          .filter((one) => visit.answers.counters?.[one.appliance])
          .map((one) => said.counter(one.name, one.value, one.unit, one.perDay, one.since ?? ""))
      : []),
    ...(visit.kind === "commissioning" ? [said.says.baseline] : []),
    ...(drips ? [said.drips(drips)] : []),
    ...(acceptance ? [said.acceptance(acceptance)] : []),
    ...file.openPoints
      .filter((point) => point.code === "advice" && point.openedVisit === visit.id)
      .map((point) => said.advice(point)),
    ...(bypass
      ? [
          said.bypassSoFar(
            bypass.since,
            bypass.days,
            bypass.litresPerDay,
            bypass.scaleG.kind === "known" ? bypass.scaleG.value : undefined,
          ),
        ]
      : []),
  ];
}

function ticked(check: "complaint" | "premises" | "shown", visit: KeptVisit, words: Messages): string[] {
  const answer = visit.answers[check];
  if (!answer) return [];
  const { title, items } = words.visit.checks[check];
  const named = (ids: readonly string[]) => ids.map((id) => items[id] ?? id);
  return [
    ...(answer.items.length > 0 ? [words.visit.ticked(title, named(answer.items))] : []),
    ...(answer.not?.length ? [words.visit.notSo(title, named(answer.not))] : []),
    ...(answer.note ? [words.visit.inWords(answer.note)] : []),
  ];
}

/** Procedures in which something was written down, in the order of hands. A sanitising without its last strip says so. */
function stepLines(visit: KeptVisit, words: Messages): string[] {
  const steps = visit.steps ?? {};
  const tasks = [...new Set(Object.keys(steps).map((key) => key.slice(0, key.lastIndexOf(":"))))];
  const lines = tasks.flatMap((task) => {
    const told = procedureOf(task).flatMap(({ id }) => {
      const done = steps[`${task}:${id}`];
      return done && hasMore(done) ? [words.visit.step(words.visit.steps[id]?.title ?? id, done)] : [];
    });
    return told.length > 0 ? [`${words.taskTitle(task)}: ${told.join("; ")}`] : [];
  });
  const unproven = visit.work.sanitise?.state === "done" && !steps["sanitise:stripZero"];
  return unproven ? [...lines, words.visit.says.stripNotWritten] : lines;
}

const hasMore = (done: StepDone) =>
  done.value !== undefined || done.minutes !== undefined || done.text !== undefined;
