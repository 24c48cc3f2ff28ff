import type { Assessment, DueItem } from "@tapside/assessment";
import { type KeptVisit, leavesFilling, staysBypassed, type UnitFile } from "@tapside/records";
import { type DecimalSign, inSign, type Messages } from "@tapside/words";
import type { Block, ValveSign } from "./block.ts";

/** How the unit was left: inspection, valves, parts, decisions, what is open with its owner, what is due next. */
export function leftBehind(
  file: UnitFile,
  visit: KeptVisit,
  assessment: Assessment,
  words: Messages,
): Block[] {
  const { titles } = words.record;
  const tank = visit.answers.tankState;
  return [
    { kind: "list", title: titles.inspection, items: inspection(visit, words) },
    { kind: "list", title: titles.sampling, items: tank ? [words.record.tankState(tank)] : [] },
    ...valvesAsLeft(visit, words),
    { kind: "list", title: titles.fitted, items: fitted(visit, words) },
    { kind: "list", title: titles.decisions, items: decisions(file, visit, words) },
    { kind: "list", title: titles.open, items: open(file, visit, assessment, words) },
    { kind: "list", title: titles.due, items: assessment.due.map((item) => dueLine(item, words)) },
  ];
}

function inspection(visit: KeptVisit, { record, inspection: names }: Messages): string[] {
  const exceptions = Object.entries(visit.exceptions).map(([item, { state, note }]) =>
    record.exception(names[item] ?? item, state, note ?? ""),
  );
  if (exceptions.length > 0) return exceptions;
  return [visit.answers.inspection ? record.says.asItShouldBe : record.says.notWritten];
}

function valvesAsLeft({ answers: { valvesAsLeft: valves } }: KeptVisit, { record }: Messages): Block[] {
  const title = record.titles.valves;
  if (!valves) return [{ kind: "list", title, items: [record.says.notWritten] }];
  const signs = (["feed", "tank", "bypass", "drain", "sample", "blend"] as const).flatMap(
    (valve): ValveSign[] => {
      const state = valves[valve];
      const seal = valve === "bypass" ? (valves.seal ?? "") : "";
      return state ? [{ text: record.valve(valve, state, seal), open: state === "open" }] : [];
    },
  );
  const fill = valves.appliancesFill && record.appliancesFill(valves.appliancesFill === "seen");
  return [
    { kind: "list", title, items: [signs.map((sign) => sign.text).join(", ")], valves: signs },
    ...(fill ? [{ kind: "paragraph", text: fill } as const] : []),
  ];
}

const fitted = (visit: KeptVisit, words: Messages): string[] =>
  Object.entries(visit.work)
    .filter(([, work]) => work.state === "done")
    .map(([task, work]) =>
      [
        words.taskTitle(task),
        task.startsWith("replace:") && words.record.lot(work.lot ?? ""),
        work.value !== undefined && `${work.value} ${work.unit ?? ""}`.trimEnd(),
      ]
        .filter(Boolean)
        .join(", "),
    );

/** Who was asked and what they decided; advice once refused stays in every later record. */
function decisions(
  file: UnitFile,
  visit: KeptVisit,
  { record, openPoint, settledPoint }: Messages,
): string[] {
  const { bypass, roOptional } = visit.answers;
  const settled = file.settledPoints.filter((point) => point.refusedBy || point.closedVisit === visit.id);
  return [
    ...(bypass ? [record.bypass(bypass)] : []),
    ...(roOptional ? [record.roOptional(roOptional)] : []),
    ...settled.map((point) => record.settled(openPoint(point), settledPoint(point))),
  ];
}

function open(file: UnitFile, visit: KeptVisit, assessment: Assessment, words: Messages): string[] {
  const { record } = words;
  const { filling } = visit.answers;
  const left = Object.entries(visit.work).filter(([, work]) => work.state === "left");
  const answered = new Set(Object.keys(visit.work));
  return [
    ...(filling?.state === "seen" || staysBypassed(visit) || !leavesFilling(visit)
      ? []
      : [record.filling(filling?.state ?? "notSeen", filling?.expectedHours)]),
    ...left.map(([task, work]) => record.left(words.taskTitle(task), work.reason ?? "")),
    ...assessment.tasks
      .filter((task) => !answered.has(task.id))
      .map((task) => record.notDone(words.taskTitle(task.id), words.taskWhy(task))),
    ...file.openPoints
      .filter((point) => point.openedVisit !== visit.id)
      .map((point) => earlierPoint(point, words)),
  ];
}

function earlierPoint(point: UnitFile["openPoints"][number], { record, openPoint }: Messages): string {
  const kept = point.keptReason ? `; ${record.keptOpen(point.keptReason)}` : "";
  return `${record.earlier(openPoint(point), point.owner ?? "", point.due ?? "")}${kept}`;
}

function dueLine(item: DueItem, { record, roles, decimalSign }: Messages): string {
  const role = roles[item.role as keyof Messages["roles"]] ?? item.role;
  const { low, high } = item.litresLeft ?? {};
  const litres =
    low === undefined || high === undefined
      ? ""
      : high <= 0
        ? record.says.usedUp
        : record.moreLitres(...cubicMetres(low, high, decimalSign));
  return `${record.dueBy(role, item.byDate ?? "", litres)}${item.overdue ? record.says.due : ""}`;
}

/** A cartridge used beyond its rating has nothing left, not less than nothing; tenths only where the range is narrow enough for them. */
function cubicMetres(lowL: number, highL: number, decimalSign: DecimalSign): [string, string] {
  const decimals = highL - lowL < 10_000 ? 1 : 0;
  const told = (litres: number) => inSign((Math.max(0, litres) / 1000).toFixed(decimals), decimalSign);
  return [told(lowL), told(highL)];
}
