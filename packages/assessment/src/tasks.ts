import { type PartRole, partsInService, type UnitFile, type VisitKind } from "@tapside/records";
import type { DueItem, Finding, Task } from "./assessment.ts";
import type { Visit } from "./internal/parts-in-service.ts";

/** Order of hands: carbon before the element, sanitising with both out, element, air, tank water discarded last. */
const ORDER = [
  "shutDown",
  "remove",
  "restart",
  "replace:sediment",
  "replace:carbon",
  "replace:scaleInhibitor",
  "rinseCarbon",
  "replace:shutOff",
  "replace:checkValve",
  "replace:tank",
  "sanitise",
  "replace:element",
  "rinsePreservative",
  "replace:postCarbon",
  "replace:remineraliser",
  "replace:uvLamp",
  "setAirCharge",
  "findBackflow",
  "discardTank",
];

const OPENING = ["appliancesHeld", "pressureToZero", "wetElectricity"] as const;

/** Caution ids at each task; the words package says them. */
const CAUTIONS: Readonly<Record<string, readonly string[]>> = {
  "replace:sediment": [...OPENING, "wetFloor"],
  "replace:carbon": [...OPENING, "rinseBeforeElement", "wetFloor"],
  "replace:scaleInhibitor": [...OPENING],
  rinseCarbon: ["rinseBeforeElement"],
  "replace:element": [...OPENING, "discardFirstWater", "hygiene"],
  "replace:postCarbon": [...OPENING, "discardFirstWater", "hygiene"],
  "replace:remineraliser": [...OPENING, "discardFirstWater"],
  "replace:uvLamp": ["uvEyes", "wetElectricity"],
  "replace:tank": [
    "appliancesHeld",
    "pressureToZero",
    "tankHeavy",
    "tankEnergy",
    "workingAlone",
    "discardFirstWater",
  ],
  sanitise: [
    "appliancesHeld",
    "bleachNeverMixed",
    "bleachNotThroughElement",
    "ventilate",
    "workingAlone",
    "rinseToZero",
    "discardFirstWater",
  ],
  setAirCharge: ["appliancesHeld", "tankEnergy", "handPumpOnly", "tankHeavy"],
  findBackflow: ["appliancesHeld", "pressureToZero", "backflowLicensed"],
  discardTank: ["appliancesHeld", "hotSurfaces", "discardFirstWater", "productUse"],
  rinsePreservative: [
    "appliancesHeld",
    "rinseBeforeElement",
    "reducingValve",
    "discardFirstWater",
    "productUse",
  ],
  shutDown: ["appliancesHeld", "pressureToZero", "wetElectricity"],
  restart: ["appliancesHeld", "stagnantWater", "reducingValve", "discardFirstWater", "productUse"],
  remove: [...OPENING, "tankHeavy", "workingAlone", "deadLegs", "backflowLicensed"],
};

/** Service work for this visit: what is due, what the findings call for, what was left open; in the order of hands. */
export function tasksOf(
  file: UnitFile,
  visit: Visit,
  findings: readonly Finding[],
  due: readonly DueItem[],
): readonly Task[] {
  const kind = visit.kind ?? "annual";
  const own = OWN_WORK[kind]?.(file, visit) ?? [];
  const proposed: Task[] = ONLY_OWN_WORK.has(kind)
    ? own
    : [...fromFindings(file, visit, findings), ...fromDue(due), ...fromOpenPoints(file, visit), ...own];
  const withFollowers = [...proposed, ...followers(proposed, findings)];
  const unique = withFollowers.filter(
    (one, i) => withFollowers.findIndex((other) => other.id === one.id) === i,
  );
  return unique.sort((a, b) => place(a.id) - place(b.id) || (a.id < b.id ? -1 : 1));
}

const stem = (id: string): string => id.split(":").slice(0, 2).join(":");
const place = (id: string): number => {
  const at = ORDER.indexOf(stem(id));
  return at < 0 ? ORDER.length : at;
};

export const cautionsOf = (id: string): readonly string[] =>
  CAUTIONS[stem(id)] ?? ["appliancesHeld", "pressureToZero"];

const task = (id: string, why: Task["why"], more: Pick<Task, "part" | "detail"> = {}): Task => ({
  id,
  why,
  ...more,
  cautions: cautionsOf(id),
});

const kindTask = (id: string, part?: string): Task =>
  task(id, "kindOfVisit", part === undefined ? {} : { part });

const CARTRIDGES: readonly PartRole[] = ["sediment", "carbon", "scaleInhibitor", "postCarbon"];

/** The cartridges on record, one task a role; sediment and carbon when none is on record. */
function cartridges(file: UnitFile, visit: Visit): Task[] {
  const fitted = CARTRIDGES.flatMap((role) => {
    const part = partsInService(file, visit, "asFound", role)[0];
    return part ? [kindTask(`replace:${role}`, part.id)] : [];
  });
  return fitted.length > 0 ? fitted : [kindTask("replace:sediment"), kindTask("replace:carbon")];
}

/** What a kind of visit is for, whatever the readings say. */
const OWN_WORK: Readonly<Partial<Record<VisitKind, (file: UnitFile, visit: Visit) => Task[]>>> = {
  filterOnly: cartridges,
  commissioning: () => [kindTask("rinsePreservative")],
  shutDown: () => [kindTask("shutDown")],
  restart: (file, visit) => [
    kindTask("restart"),
    ...cartridges(file, visit),
    kindTask("sanitise"),
    kindTask("discardTank"),
  ],
  removal: () => [kindTask("remove")],
};

/** At these visits nothing else is proposed: the unit is not to go on working. */
const ONLY_OWN_WORK: ReadonlySet<VisitKind> = new Set(["survey", "shutDown", "removal", "noAccess"]);

function fromFindings(file: UnitFile, visit: Visit, findings: readonly Finding[]): Task[] {
  return findings
    .filter((one) => one.phase === "asFound" && one.action !== undefined && one.verdict === "outside")
    .map((one) => {
      const role = one.action!.startsWith("replace:") ? (one.action!.split(":")[1] as PartRole) : undefined;
      const part = role && partsInService(file, visit, "asFound", role)[0]?.id;
      return task(one.action!, "finding", {
        ...(part !== undefined && { part }),
        detail: { finding: one.id, ...(one.id === "airCharge" && one.detail) },
      });
    });
}

/** A second cartridge of the same role gets an id of its own. */
function fromDue(due: readonly DueItem[]): Task[] {
  const seen = new Set<string>();
  return due.flatMap((item) => {
    const first = !seen.has(item.role);
    seen.add(item.role);
    if (!item.overdue) return [];
    const id = first ? `replace:${item.role}` : `replace:${item.role}:${item.part}`;
    const byLitres = item.litresLeft !== undefined && item.litresLeft.low <= 0;
    const byHours = item.hoursLeft !== undefined && item.hoursLeft <= 0;
    const other = item.hoursLeft !== undefined && !item.litresLeft ? "dueByHours" : "dueByLitres";
    const why = byLitres
      ? "dueByLitres"
      : byHours
        ? "dueByHours"
        : item.byDate === null
          ? other
          : "dueByDate";
    return [task(id, why, { part: item.part, detail: item.byDate ? { byDate: item.byDate } : {} })];
  });
}

function fromOpenPoints(file: UnitFile, visit: Visit): Task[] {
  return file.openPoints
    .filter((one) => one.openedVisit !== visit.id && one.code?.startsWith("work:"))
    .map((one) => task(one.code!.slice("work:".length), "openPoint", { detail: { openPoint: one.id } }));
}

/** New carbon is rinsed to drain, an opened element or tank is sanitised, its first water discarded. */
function followers(tasks: readonly Task[], findings: readonly Finding[]): Task[] {
  const ids = new Set(tasks.map((one) => stem(one.id)));
  const opened = ids.has("replace:element") || ids.has("replace:tank");
  const backflow = findings.some(
    (one) => one.phase === "asFound" && one.id === "deliveredOverMembrane" && one.verdict === "outside",
  );
  return [
    ...(ids.has("replace:carbon") ? [task("rinseCarbon", "finding")] : []),
    ...(opened ? [task("sanitise", "finding"), task("discardTank", "finding")] : []),
    ...(backflow ? [task("findBackflow", "finding", { detail: { finding: "deliveredOverMembrane" } })] : []),
  ];
}
