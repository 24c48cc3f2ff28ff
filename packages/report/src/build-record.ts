import type { Assessment } from "@tapside/assessment";
import type { KeptVisit, Settings, UnitFile } from "@tapside/records";
import { inputsMark } from "@tapside/records";
import type { Messages } from "@tapside/words";
import type { Block, RecordContent } from "./block.ts";
import { findingList } from "./finding-list.ts";
import { howSure } from "./how-sure.ts";
import { judgedFrom } from "./judged-from.ts";
import { leftBehind } from "./left-behind.ts";
import { lifeFigure } from "./life-figure.ts";
import { readingRows } from "./reading-rows.ts";
import { rounded } from "./rounded.ts";
import { visitSummary } from "./visit-summary.ts";
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
  /** Settings the assessment was made with; frozen with it. */
  readonly settings?: Partial<Settings>;
}

/** The service record of a visit as content to freeze and to print. */
export function buildRecord(request: RecordRequest): RecordContent {
  const { file, visitId, assessment, issuedAt } = request;
  const visit = file.visits.find((one) => one.id === visitId);
  if (!visit) throw new Error(`visit ${visitId} is not in the unit's file`);
  const place = [file.site.name, file.point.name, file.unit.name, ...file.appliances.map((one) => one.name)];
  return {
    version: 1,
    title: "Service record",
    subtitle: place.filter(Boolean).join(", "),
    aside: aside(visit, request),
    revision: request.revision,
    unit: file.unit.id,
    visit: visitId,
    issuedAt,
    inputsMark: inputsMark(file, visitId),
    temperatureForm: assessment.temperatureForm,
    assessment: rounded(assessment),
    inputs: rounded(judgedFrom(file, visitId)),
    settings: rounded({ ...request.settings, timeZone: request.timeZone }),
    sources: sourcesOf(assessment),
    blocks: blocksOf(visit, request),
  };
}

const sourcesOf = (assessment: Assessment): readonly string[] =>
  [...new Set(assessment.findings.flatMap((one) => (one.limit ? [one.limit.source] : [])))].sort();

function blocksOf(visit: KeptVisit, request: RecordRequest): readonly Block[] {
  const { file, assessment, words, timeZone } = request;
  return [
    ...visitSummary(visit, assessment, words),
    {
      kind: "readings",
      head: [atTheUnit(visit), "as found", "as left", "limit: source"],
      rows: readingRows(file, visit, assessment, words),
      water: waterLine(file, visit, assessment),
    },
    ...lifeFigure(assessment, visit.id, words),
    ...findingList(assessment, words),
    ...leftBehind(file, visit, assessment, words),
    ...people(visit, words),
    { kind: "newPage" },
    ...howSure(file, visit, assessment, words, timeZone),
  ];
}

function aside(visit: KeptVisit, { issuedAt, timeZone, words, revision }: RecordRequest): readonly string[] {
  const start = visit.startedAt ?? issuedAt;
  const time = (iso: string) =>
    new Date(iso).toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit", timeZone });
  const day = new Date(start).toLocaleDateString("en-GB", {
    weekday: "long",
    day: "numeric",
    month: "short",
    year: "numeric",
    timeZone,
  });
  const kind = words.visitKinds[visit.kind ?? "annual"];
  return [day, `${kind}, ${time(start)} to ${time(issuedAt)}`, `revision ${revision}`];
}

function atTheUnit(visit: KeptVisit): string {
  const temperature = visit.readings.asFound.feedTemperature;
  return temperature?.value != null ? `at the unit, ${temperature.raw} ${temperature.unit}` : "at the unit";
}

function people(visit: KeptVisit, words: Messages): Block[] {
  const signature = visit.answers.signature;
  const said =
    signature?.kind === "signed"
      ? `${signature.name}, ${signature.role}: present at the end`
      : signature?.kind === "refused"
        ? `${signature.name ?? "present person"}: does not sign`
        : "Nobody of the kitchen was present.";
  return [
    { kind: "paragraph", text: words.doesNotTestFor },
    { kind: "paragraph", text: `${visit.technician ?? "technician not named"}, technician` },
    { kind: "signature", text: said, ...(signature?.path && { path: signature.path }) },
  ];
}
