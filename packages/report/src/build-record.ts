import type { Assessment, Finding } from "@tapside/assessment";
import { lifeStrip } from "@tapside/pictures";
import type { KeptVisit, UnitFile } from "@tapside/records";
import { inputsMark } from "@tapside/records";
import type { Messages } from "@tapside/words";
import { formatFigure } from "@tapside/words";
import type { Block, RecordContent } from "./block.ts";
import { readingRows } from "./reading-rows.ts";
import { rounded } from "./rounded.ts";

export interface RecordRequest {
  readonly file: UnitFile;
  readonly visitId: string;
  readonly assessment: Assessment;
  readonly words: Messages;
  /** ISO instant. */
  readonly issuedAt: string;
  readonly timeZone: string;
  readonly revision: number;
}

/** The service record of a visit as content to freeze and to print. */
export function buildRecord(request: RecordRequest): RecordContent {
  const { file, visitId, assessment, words, issuedAt } = request;
  const visit = file.visits.find((one) => one.id === visitId);
  if (!visit) throw new Error(`visit ${visitId} is not in the unit's file`);
  const place = [file.site.name, file.point.name, file.unit.name, ...file.appliances.map((one) => one.name)];
  return {
    version: 1,
    title: "Service record",
    subtitle: place.filter(Boolean).join(", "),
    aside: [
      dayOf(visit.startedAt ?? issuedAt, request.timeZone),
      `${words.visitKinds[visit.kind ?? "annual"]}, ${timeOf(visit.startedAt ?? issuedAt, request.timeZone)} to ${timeOf(issuedAt, request.timeZone)}`,
      `revision ${request.revision}`,
    ],
    revision: request.revision,
    unit: file.unit.id,
    visit: visitId,
    issuedAt,
    inputsMark: inputsMark(file, visitId),
    temperatureForm: assessment.temperatureForm,
    assessment: rounded(assessment),
    blocks: [
      ...summary(visit, assessment, words),
      {
        kind: "readings",
        head: [atTheUnit(visit), "as found", "as left", "limit: source"],
        rows: readingRows(visit, assessment, words),
      },
      ...life(assessment, visitId),
      ...findings(assessment, words),
      ...leftBehind(file, visit, assessment, words),
      ...people(visit, words),
      { kind: "newPage" },
      ...howSure(file, visit, assessment, words),
    ],
  };
}

const dayOf = (iso: string, timeZone: string) =>
  new Date(iso).toLocaleDateString("en-GB", {
    weekday: "long",
    day: "numeric",
    month: "short",
    year: "numeric",
    timeZone,
  });

const timeOf = (iso: string, timeZone: string) =>
  new Date(iso).toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit", timeZone });

function atTheUnit(visit: KeptVisit): string {
  const temperature = visit.readings.asFound.feedTemperature;
  return temperature?.value != null ? `at the unit, ${temperature.raw} ${temperature.unit}` : "at the unit";
}

/** One line that says what was done, one for what could not be said. */
function summary(visit: KeptVisit, assessment: Assessment, words: Messages): Block[] {
  const done = Object.entries(visit.work)
    .filter(([, work]) => work.state === "done")
    .map(([task]) => `${words.taskTitle(task)}: done`);
  const open = assessment.findings.filter(
    (one) => one.verdict === "outside" && one.phase === "asFound",
  ).length;
  const headline =
    visit.answers.inUse === "bypassed"
      ? "The unit is bypassed."
      : done.length > 0
        ? `${done.join(". ")}.`
        : open > 0
          ? "Findings outside their limits."
          : "Nothing had to be changed.";
  return [{ kind: "paragraph", text: headline, strong: true }];
}

function life(assessment: Assessment, visitId: string): Block[] {
  const points = assessment.life.filter((point) => point.flowRatio || point.saltRatio);
  if (points.length < 2) return [];
  const times = points.map((point) => Date.parse(point.at));
  const first = Math.min(...times);
  const span = Math.max(...times) - first || 1;
  const description = points
    .map(
      (point) =>
        `${point.at.slice(0, 10)}: flow ${point.flowRatio?.value.toFixed(2) ?? "not known"}, salt passage ${point.saltRatio?.value.toFixed(2) ?? "not known"} of new`,
    )
    .join("; ");
  const svg = lifeStrip({
    theme: "paper",
    title: "Life of this element",
    description,
    words: { salt: "salt", flow: "flow", fresh: "new", today: "this visit" },
    points: points.map((point, i) => ({
      place: (times[i]! - first) / span,
      ...(point.flowRatio && { flowRatio: point.flowRatio.value, flowU: 2 * point.flowRatio.u }),
      ...(point.saltRatio && { saltRatio: point.saltRatio.value, saltU: 2 * point.saltRatio.u }),
      filters: point.marks.includes("filters"),
      bypass: point.marks.includes("bypass"),
      today: point.visit === visitId,
    })),
  });
  return [{ kind: "figure", svg, alt: `Life of this element. ${description}`, heightPt: 110 }];
}

/** Each finding that is not simply within, in order of consequence: what, why, limit, source, what was done. */
function findings(assessment: Assessment, words: Messages): Block[] {
  const loud = assessment.findings.filter(
    (one) => one.verdict !== "within" && (one.verdict !== "information" || one.consequence > 10),
  );
  const items = loud.map((one) => findingLine(one, words));
  const questions = assessment.questions.map((one) => words.question(one));
  return [
    {
      kind: "list",
      title: "Findings",
      items: items.length > 0 ? items : ["Everything that could be judged is within its limit."],
    },
    { kind: "list", title: "Readings that were questioned", items: questions },
  ];
}

function findingLine(finding: Finding, words: Messages): string {
  const text = words.finding(finding);
  const figure = finding.figure && formatFigure(finding.figure);
  const number = figure
    ? ` ${figure.text}${figure.uText ? ` ± ${figure.uText}` : ""} ${finding.figure?.unit ?? ""}`
    : "";
  const action = finding.action ? `; to do: ${words.taskTitle(finding.action).toLowerCase()}` : "";
  return `${text.title} (${finding.phase === "asFound" ? "as found" : "as left"}): ${text.verdict}${number}${text.limit ? `; limit ${text.limit}` : ""}${text.reason ? `; ${text.reason}` : ""}${action}`;
}

function leftBehind(file: UnitFile, visit: KeptVisit, assessment: Assessment, words: Messages): Block[] {
  const valves = visit.answers.valvesAsLeft;
  const parts = Object.entries(visit.work).filter(
    ([task, work]) => work.state === "done" && task.startsWith("replace:"),
  );
  const left = Object.entries(visit.work).filter(([, work]) => work.state === "left");
  const answered = new Set(Object.keys(visit.work));
  const notDone = assessment.tasks.filter((task) => !answered.has(task.id));
  const bypass = visit.answers.bypass;
  const optional = visit.answers.roOptional;
  const filling = visit.answers.filling;
  return [
    {
      kind: "list",
      title: "Valves as left",
      items: valves
        ? [
            `feed ${valves.feed}, tank ${valves.tank}, bypass ${valves.bypass}, sample ${valves.sample}${valves.seal ? `, seal ${valves.seal}` : ""}`,
          ]
        : ["not written down"],
    },
    {
      kind: "list",
      title: "Parts fitted",
      items: parts.map(
        ([task, work]) =>
          `${words.taskTitle(task)}${work.lot ? `, lot ${work.lot}` : ", lot not written down"}`,
      ),
    },
    {
      kind: "list",
      title: "Decisions",
      items: [
        ...(bypass
          ? [
              `Bypass: asked ${bypass.name}, ${bypass.role}; ${bypass.decision === "putInUse" ? "put back in use" : `stays bypassed until ${bypass.until}`}${bypass.seal ? `, seal ${bypass.seal}` : ""}`,
            ]
          : []),
        ...(optional
          ? [
              `RO optional at this feed: asked ${optional.name}, ${optional.role}; ${{ keep: "keeps the unit", takeOut: "wants it taken out", undecided: "not decided" }[optional.decision]}`,
            ]
          : []),
      ],
    },
    {
      kind: "list",
      title: "Open",
      items: [
        ...(filling?.state === "seen"
          ? []
          : [
              `Filling, shut-off ${filling?.state === "reported" ? "to be reported by the kitchen" : "not seen"}${filling?.expectedHours ? `; expected about ${filling.expectedHours.toFixed(1)} h` : ""}`,
            ]),
        ...left.map(
          ([task, work]) => `${words.taskTitle(task)}: left${work.reason ? `, ${work.reason}` : ""}`,
        ),
        ...notDone.map((task) => `${words.taskTitle(task.id)}: not answered (${words.taskWhy(task)})`),
        ...file.openPoints
          .filter((point) => point.openedVisit !== visit.id)
          .map((point) => `from an earlier visit: ${point.code}${point.owner ? `, ${point.owner}` : ""}`),
      ],
    },
    {
      kind: "list",
      title: "Next due, by date or litres, whichever first",
      items: assessment.due.map(
        (item) =>
          `${words.roles[item.role as keyof Messages["roles"]] ?? item.role}: ${item.byDate ?? "fitting date not known"}${item.litresLeft ? `, ${(item.litresLeft.low / 1000).toFixed(1)} to ${(item.litresLeft.high / 1000).toFixed(1)} m³ left` : ""}${item.overdue ? " (due)" : ""}`,
      ),
    },
  ];
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

/** The last page: what the numbers stand on. */
function howSure(file: UnitFile, visit: KeptVisit, assessment: Assessment, words: Messages): Block[] {
  const used = new Set(
    Object.values(visit.readings).flatMap((phase) =>
      Object.values(phase).map((reading) => reading.instrument),
    ),
  );
  const instruments = [...file.instruments.values()].filter((one) => used.has(one.id));
  const scales = new Set(
    Object.values(visit.readings.asFound)
      .map((reading) => reading.scale)
      .filter(Boolean),
  );
  return [
    { kind: "heading", text: "What the numbers stand on" },
    {
      kind: "paragraph",
      text: "± is the expanded uncertainty U (k = 2) by first-order propagation (JCGM 100). Within and outside are stated only when the value clears its limit by U; else it is too close to say.",
    },
    {
      kind: "paragraph",
      text: `Membrane flow and salt passage are corrected to reference conditions in the form of ASTM D4516 with the temperature form ${assessment.temperatureForm}, against this element when new.`,
    },
    {
      kind: "paragraph",
      text:
        scales.size > 0
          ? `Dissolved solids are as the meter shows them on the scale ${[...scales].join(", ")}.`
          : "No scale of dissolved solids was written down.",
    },
    {
      kind: "list",
      title: "Instruments",
      items:
        instruments.length > 0
          ? instruments.map(
              (one) =>
                `${one.name}: ${one.unit}${one.scale ? `, scale ${one.scale}` : ""}; last checked ${one.lastCheckedOn ?? "not known"}`,
            )
          : ["No instrument was named; usual accuracies were taken."],
    },
    {
      kind: "list",
      title: "Sources of limits",
      items: [
        ...new Set(
          assessment.findings.flatMap((one) =>
            one.limit ? [`${words.finding(one).title}: ${words.finding(one).limit}`] : [],
          ),
        ),
      ],
    },
    { kind: "paragraph", text: words.localCode, quiet: true },
  ];
}
