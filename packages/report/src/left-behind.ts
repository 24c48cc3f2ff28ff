import type { Assessment, DueItem } from "@tapside/assessment";
import type { KeptVisit, UnitFile } from "@tapside/records";
import type { Messages } from "@tapside/words";
import type { Block, ValveSign } from "./block.ts";

/** How the unit was left: inspection, valves, parts, decisions, what is open with its owner, what is due next. */
export function leftBehind(
  file: UnitFile,
  visit: KeptVisit,
  assessment: Assessment,
  words: Messages,
): Block[] {
  return [
    { kind: "list", title: "Inspection", items: inspection(visit) },
    valvesAsLeft(visit),
    { kind: "list", title: "Parts fitted and settings made", items: fitted(visit, words) },
    { kind: "list", title: "Advice and decisions", items: decisions(visit) },
    { kind: "list", title: "Open", items: open(file, visit, assessment, words) },
    {
      kind: "list",
      title: "Next due, by date or litres, whichever first",
      items: assessment.due.map((item) => dueLine(item, words)),
    },
  ];
}

function inspection(visit: KeptVisit): string[] {
  const exceptions = Object.entries(visit.exceptions).map(
    ([item, { state, note }]) =>
      `${item.replace(/([A-Z])/g, " $1").toLowerCase()}: ${state === "left" ? "left as it was" : state}${note ? `, ${note}` : ""}`,
  );
  if (exceptions.length > 0) return exceptions;
  return [visit.answers.inspection ? "all as it should be, as far as looked at" : "not written down"];
}

function valvesAsLeft({ answers: { valvesAsLeft: valves } }: KeptVisit): Block {
  if (!valves) return { kind: "list", title: "Valves as left", items: ["not written down"] };
  const signs = (["feed", "tank", "bypass", "sample"] as const).map(
    (valve): ValveSign => ({
      text: `${valve} ${valves[valve]}${valve === "bypass" && valves.seal ? `, seal ${valves.seal}` : ""}`,
      open: valves[valve] === "open",
    }),
  );
  return {
    kind: "list",
    title: "Valves as left",
    items: [signs.map((sign) => sign.text).join(", ")],
    valves: signs,
  };
}

const fitted = (visit: KeptVisit, words: Messages): string[] =>
  Object.entries(visit.work)
    .filter(([, work]) => work.state === "done")
    .map(([task, work]) => {
      const lot = work.lot ? `, lot ${work.lot}` : ", lot not written down";
      const set = work.value !== undefined ? `, ${work.value} ${work.unit ?? ""}` : "";
      return `${words.taskTitle(task)}${task.startsWith("replace:") ? lot : ""}${set}`.trimEnd();
    });

const OPTIONAL = { keep: "keeps the unit", takeOut: "wants it taken out", undecided: "not decided" } as const;

function decisions({ answers: { bypass, roOptional } }: KeptVisit): string[] {
  const asked = (who: { name: string; role: string }) => `asked ${who.name}, ${who.role}`;
  return [
    ...(bypass
      ? [
          `Bypass: ${asked(bypass)}; ${bypass.decision === "putInUse" ? "put back in use" : `stays bypassed until ${bypass.until ?? "no end date given"}`}${bypass.seal ? `, seal ${bypass.seal}` : ""}`,
        ]
      : []),
    ...(roOptional
      ? [`RO optional at this feed: ${asked(roOptional)}; ${OPTIONAL[roOptional.decision]}`]
      : []),
  ];
}

function open(file: UnitFile, visit: KeptVisit, assessment: Assessment, words: Messages): string[] {
  const { filling, inUse } = visit.answers;
  const left = Object.entries(visit.work).filter(([, work]) => work.state === "left");
  const answered = new Set(Object.keys(visit.work));
  const expected = filling?.expectedHours ? `; expected about ${filling.expectedHours.toFixed(1)} h` : "";
  const state = filling?.state === "reported" ? "to be reported by the kitchen" : "not seen";
  const stillBypassed = inUse === "bypassed" && visit.answers.bypass?.decision !== "putInUse";
  return [
    ...(filling?.state === "seen" || stillBypassed ? [] : [`Filling, shut-off ${state}${expected}`]),
    ...left.map(([task, work]) => `${words.taskTitle(task)}: left${work.reason ? `, ${work.reason}` : ""}`),
    ...assessment.tasks
      .filter((task) => !answered.has(task.id))
      .map((task) => `${words.taskTitle(task.id)}: not done (${words.taskWhy(task)})`),
    ...file.openPoints.filter((point) => point.openedVisit !== visit.id).map(earlierPoint),
  ];
}

function earlierPoint(point: UnitFile["openPoints"][number]): string {
  const due = point.due ? `, by ${point.due}` : "";
  return `from an earlier visit: ${point.detail ?? point.code}; ${point.owner ?? "owner not named"}${due}`;
}

function dueLine(item: DueItem, words: Messages): string {
  const role = words.roles[item.role as keyof Messages["roles"]] ?? item.role;
  const litres = item.litresLeft
    ? `, or after ${cubicMetres(item.litresLeft.low)} to ${cubicMetres(item.litresLeft.high)} m³ more`
    : "";
  return `${role}: ${item.byDate ? `by ${item.byDate}` : "fitting date not known"}${litres}${item.overdue ? " (due)" : ""}`;
}

/** A cartridge used beyond its rating has nothing left, not less than nothing. */
const cubicMetres = (litres: number): string => (Math.max(0, litres) / 1000).toFixed(1);
