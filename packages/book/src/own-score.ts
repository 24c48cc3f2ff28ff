import { type Assessment, assess, type ExpectedId, readsAsExpected } from "@tapside/assessment";
import type { Book, KeptVisit, UnitFile } from "@tapside/records";

/** What a visit says of the work before it and of what was told. */
export interface VisitScore {
  readonly id: string;
  /** ISO date. */
  readonly on: string;
  readonly file: UnitFile;
  readonly kind: string;
  readonly technician: string;
  /** Who made the visit this one calls back; absent when it calls none back. */
  readonly callsBack?: string;
  /** An element put in although flow and salt passage of the old one were within their limits, one put in otherwise, one kept past its day as good. */
  readonly element?: "newThoughGood" | "new" | "keptAsGood";
  /** Readings of a unit with nothing outside its limits for which a band was told from its pressure and temperature. */
  readonly told: number;
  /** Those of them that lay in the band. */
  readonly inside: number;
}

export interface ScoreAsked {
  readonly files: readonly UnitFile[];
  readonly settings: Book["settings"];
  /** ISO date; what lies before it is not looked at. */
  readonly since: string;
}

/** A call-out or complaint within this many days of a visit calls it back: common practice, no source. */
const CALLED_BACK_DAYS = 30;
const CALLED: ReadonlySet<string> = new Set(["callOut", "quality"]);
/** Not a visit that worked on the unit. */
const IDLE: ReadonlySet<string> = new Set(["noAccess", "survey"]);
const MS_PER_DAY = 86_400_000;

/** Every visit since a day, oldest first, one judged at a time. */
export function* ownScore({ files, settings, since }: ScoreAsked): Generator<void, readonly VisitScore[]> {
  const scores: VisitScore[] = [];
  for (const file of files)
    for (const visit of file.visits) {
      const on = (visit.startedAt ?? "").slice(0, 10);
      if (on < since || !visit.startedAt) continue;
      scores.push(scoreOf(file, visit, on, settings));
      yield;
    }
  return scores.sort((a, b) => (a.on + a.id < b.on + b.id ? -1 : 1));
}

function scoreOf(file: UnitFile, visit: KeptVisit, on: string, settings: Book["settings"]): VisitScore {
  const asOf = visit.endedAt ?? visit.startedAt!;
  const timeZone = file.site.timeZone ?? "UTC";
  const judged = assess(file, visit.id, { asOf, timeZone, settings: settings.get("settings") ?? {} });
  const callsBack = calledBack(file, visit);
  const element = elementOf(visit, judged);
  return {
    id: visit.id,
    on,
    file,
    kind: visit.kind ?? "annual",
    technician: visit.technician ?? "",
    ...(callsBack !== undefined && { callsBack }),
    ...(element && { element }),
    ...toldAndRead(visit, judged),
  };
}

/** The technician of the visit this one calls back. */
function calledBack(file: UnitFile, visit: KeptVisit): string | undefined {
  if (!CALLED.has(visit.kind ?? "")) return undefined;
  const before = file.visits.findLast(
    (one) => one.startedAt! < visit.startedAt! && !IDLE.has(one.kind ?? ""),
  );
  const days = (Date.parse(visit.startedAt!) - Date.parse(before?.startedAt ?? "")) / MS_PER_DAY;
  return days <= CALLED_BACK_DAYS ? (before?.technician ?? "") : undefined;
}

function elementOf(visit: KeptVisit, judged: Assessment): VisitScore["element"] {
  if (visit.kind === "commissioning") return undefined;
  const verdict = (id: string) =>
    judged.findings.find((one) => one.phase === "asFound" && one.id === id)?.verdict;
  const isGood = verdict("membraneFlow") === "within" && verdict("saltPassage") === "within";
  const isNew = Object.entries(visit.work).some(
    ([task, work]) => task.startsWith("replace:element") && work.state === "done",
  );
  if (isNew) return isGood ? "newThoughGood" : "new";
  const isDue = judged.due.some((item) => item.role === "element" && item.overdue);
  return isGood && isDue ? "keptAsGood" : undefined;
}

/** A unit with a fault is not expected to read as a sound one: it tells nothing of the band. */
function toldAndRead(visit: KeptVisit, judged: Assessment) {
  const isSound = !judged.findings.some((one) => one.phase === "asFound" && one.verdict === "outside");
  if (!isSound || judged.expected.kind !== "known") return { told: 0, inside: 0 };
  const compared = (Object.keys(judged.expected.value) as ExpectedId[]).flatMap(
    (id) => readsAsExpected(id, "asFound", visit, judged) ?? [],
  );
  return { told: compared.length, inside: compared.filter(Boolean).length };
}

/** The whole of some visits. */
export interface ScoreTotals {
  readonly visits: number;
  readonly callBacks: number;
  readonly elements: Readonly<Record<NonNullable<VisitScore["element"]>, number>>;
  readonly told: number;
  readonly inside: number;
}

/** Totals, and those of one technician: visits made, and visits of theirs that were called back by anybody. */
export function scoreTotals(scores: readonly VisitScore[], technician?: string): ScoreTotals {
  const theirs = scores.filter((one) => technician === undefined || one.technician === technician);
  const elements = (which: VisitScore["element"]) => theirs.filter((one) => one.element === which).length;
  const back = scores.filter(
    (one) => one.callsBack !== undefined && (technician === undefined || one.callsBack === technician),
  );
  return {
    visits: theirs.length,
    callBacks: back.length,
    elements: {
      newThoughGood: elements("newThoughGood"),
      new: elements("new"),
      keptAsGood: elements("keptAsGood"),
    },
    told: theirs.reduce((sum, one) => sum + one.told, 0),
    inside: theirs.reduce((sum, one) => sum + one.inside, 0),
  };
}

/** Technicians named in some visits, by name. */
export const techniciansIn = (scores: readonly VisitScore[]): readonly string[] =>
  [...new Set(scores.flatMap(({ technician }) => technician || []))].sort();
