import { type Assessment, RULES_VERSION } from "@tapside/assessment";
import type { AmongNeighbours } from "@tapside/book";
import type { KeptVisit, Settings, UnitFile, VisitKind } from "@tapside/records";
import { inputsMark } from "@tapside/records";
import { inSign, type Messages } from "@tapside/words";
import type { Block, RecordContent } from "./block.ts";
import { findingList } from "./finding-list.ts";
import { howSure } from "./how-sure.ts";
import { judgedFrom } from "./judged-from.ts";
import { leftBehind } from "./left-behind.ts";
import { lifeFigure } from "./life-figure.ts";
import { readingRows } from "./reading-rows.ts";
import { rounded } from "./rounded.ts";
import { suitsAppliances } from "./suits-appliances.ts";
import { visitParticulars } from "./visit-particulars.ts";
import { visitSummary } from "./visit-summary.ts";
import { waterHere } from "./water-here.ts";
import { waterHistoryFigure } from "./water-history-figure.ts";
import { waterLine } from "./water-line.ts";

export interface RecordRequest {
  readonly file: UnitFile;
  readonly visitId: string;
  readonly assessment: Assessment;
  readonly words: Messages;
  /** ISO instant. */
  readonly issuedAt: string;
  readonly timeZone: string;
  readonly revision: number;
  /** The record before it, when this is not the first. */
  readonly replaces?: { readonly revision: number; readonly mark: string } | undefined;
  /** What the search for a cause ended in, in plain words: never odds. */
  readonly causes?: readonly SaidCause[];
  /** The feed beside other units on the same water, where there are any. */
  readonly neighbours?: AmongNeighbours | undefined;
  /** Whether the unit keeps up with its kitchen, by `kitchenDay`. */
  readonly kitchenDay?: readonly Block[];
  /** Settings the assessment was made with; frozen with it. */
  readonly settings?: Partial<Settings>;
}

/** A cause, and how sure the record may say it is. */
export interface SaidCause {
  readonly cause: keyof Messages["causeNames"];
  readonly said: "found" | "mostLikely" | "notConfirmed";
  /** How large it was, in the record's own words; empty where that is not known. */
  readonly sizes?: readonly string[];
}

/** The service record of a visit as content to freeze and to print. */
export function buildRecord(request: RecordRequest): RecordContent {
  const { file, visitId, assessment, issuedAt } = request;
  const visit = file.visits.find((one) => one.id === visitId);
  if (!visit) throw new Error(`visit ${visitId} is not in the unit's file`);
  const place = [file.site.name, file.point.name, file.unit.name, ...file.appliances.map((one) => one.name)];
  return {
    version: 1,
    language: request.words.language,
    title: request.words.record.title,
    subtitle: place.filter(Boolean).join(", "),
    aside: aside(visit, request),
    revision: request.revision,
    unit: file.unit.id,
    visit: visitId,
    issuedAt,
    inputsMark: inputsMark(file, visitId),
    temperatureForm: assessment.temperatureForm,
    rules: RULES_VERSION,
    assessment: rounded(assessment),
    inputs: rounded(judgedFrom(file, visitId, assessment.standsOn)),
    settings: rounded({ ...request.settings, timeZone: request.timeZone }),
    sources: sourcesOf(assessment),
    blocks: blocksOf(visit, request),
  };
}

const sourcesOf = (assessment: Assessment): readonly string[] =>
  [...new Set(assessment.findings.flatMap((one) => (one.limit ? [one.limit.source] : [])))].sort();

/** Visits at which the unit was not judged: their record has no table of its numbers. */
const NOT_JUDGED: ReadonlySet<VisitKind> = new Set(["survey", "noAccess", "removal", "shutDown"]);

/** Visits that leave no unit behind to speak of. */
const NOTHING_LEFT: ReadonlySet<VisitKind> = new Set(["survey", "noAccess"]);

function blocksOf(visit: KeptVisit, request: RecordRequest): readonly Block[] {
  const { file, assessment, words, timeZone, replaces, issuedAt } = request;
  const kind = visit.kind ?? "annual";
  return [
    ...visitSummary(visit, assessment, words),
    ...(replaces
      ? [
          {
            kind: "paragraph",
            text: words.record.replaces(replaces.revision, replaces.mark.slice(0, 12)),
          } as const,
        ]
      : []),
    ...visitParticulars(file, visit, words, { timeZone, issuedAt }),
    ...(NOT_JUDGED.has(kind) ? [] : judgement(visit, request)),
    ...(NOTHING_LEFT.has(kind) ? [] : leftBehind(file, visit, assessment, words)),
    ...people(visit, words),
    ...(visit.kind === "noAccess" ? [] : standsOn(visit, request)),
  ];
}

function causeList({ causes = [], words: { record, causeNames } }: RecordRequest): Block[] {
  if (causes.length === 0) return [];
  const items = causes.map(({ cause, said, sizes = [] }) =>
    [record.cause[said](causeNames[cause]), ...sizes].join("; "),
  );
  return [{ kind: "list", title: record.titles.causes, items }];
}

function judgement(visit: KeptVisit, request: RecordRequest): Block[] {
  const { file, assessment, words } = request;
  return [
    {
      kind: "readings",
      head: [atTheUnit(visit, words), ...words.record.head],
      rows: readingRows(file, visit, assessment, words),
      water: waterLine(file, visit, assessment),
    },
    ...lifeFigure(assessment, visit.id, words),
    ...findingList(assessment, words),
    ...causeList(request),
  ];
}

function standsOn(visit: KeptVisit, request: RecordRequest): Block[] {
  const { file, assessment, words, timeZone, issuedAt } = request;
  return [
    { kind: "newPage" },
    ...waterHere(assessment.water?.kind === "known" ? assessment.water.value : undefined, file, words),
    ...besideNeighbours(request),
    ...suitsAppliances(assessment, words),
    ...(request.kitchenDay ?? []),
    ...waterHistoryFigure(file, visit, words, timeZone),
    ...howSure(file, visit, assessment, words, { timeZone, issuedAt }),
  ];
}

function besideNeighbours({ neighbours, words }: RecordRequest): Block[] {
  if (!neighbours) return [];
  const { said, others } = neighbours;
  const all = others.map((one) => one.ecUSPerCm);
  const [low, high] = [Math.min(...all), Math.max(...all)].map((value) => value.toFixed(0));
  return [{ kind: "paragraph", text: words.record.neighbours(said, others.length, low!, high!) }];
}

function aside(visit: KeptVisit, { issuedAt, timeZone, words, revision }: RecordRequest): readonly string[] {
  const start = visit.startedAt ?? issuedAt;
  const time = (iso: string) =>
    new Date(iso).toLocaleTimeString(words.record.locale, { hour: "2-digit", minute: "2-digit", timeZone });
  const day = new Date(start).toLocaleDateString(words.record.locale, {
    weekday: "long",
    day: "numeric",
    month: "short",
    year: "numeric",
    timeZone,
  });
  const kind = words.visitKinds[visit.kind ?? "annual"];
  return [day, words.record.times(kind, time(start), time(issuedAt)), words.record.revision(revision)];
}

function atTheUnit(visit: KeptVisit, words: Messages): string {
  const temperature = visit.readings.asFound.feedTemperature;
  return words.record.atTheUnit(
    temperature?.value != null ? `${inSign(temperature.raw, words.decimalSign)} ${temperature.unit}` : "",
  );
}

/** What an owner has to know whatever was found. */
const OWNERS_CAUTIONS = ["productUse", "backflowLicensed", "reducingValve"];

function people(visit: KeptVisit, words: Messages): Block[] {
  const signature = visit.answers.signature;
  const { record } = words;
  const said =
    signature?.kind === "signed"
      ? record.present(signature.name ?? "", signature.role ?? "")
      : signature?.kind === "refused"
        ? record.doesNotSign(signature.name ?? "")
        : record.says.nobodyPresent;
  return [
    { kind: "paragraph", text: words.doesNotTestFor },
    { kind: "paragraph", quiet: true, text: OWNERS_CAUTIONS.map(words.caution).join(" ") },
    { kind: "paragraph", text: record.technician(visit.technician ?? record.says.technicianNotNamed) },
    { kind: "signature", text: said, ...(signature?.path && { path: signature.path }) },
  ];
}
