import { ownersOf, unitHistory } from "@tapside/book";
import type { Book, Kept, KeptVisit, Reading, SlotId, UnitFile } from "@tapside/records";
import { freeze } from "@tapside/records";
import type { Messages } from "@tapside/words";
import type { Block, RecordContent } from "./block.ts";

export interface ClaimRequest {
  readonly book: Book;
  readonly file: UnitFile;
  readonly words: Messages;
  /** ISO instant. */
  readonly issuedAt: string;
}

/**
 * The claim file of one unit: what its water was when it was fitted, its history, when it was bypassed, what was advised and
 * refused, which parts with lots, and the marks of the records issued. Visits before an owner's cut-off are left out.
 */
export function buildClaim(request: ClaimRequest): RecordContent {
  const { book, file, issuedAt } = request;
  const visits = visitsShown(book, file);
  const data = {
    unit: file.unit,
    point: file.point,
    site: file.site,
    appliances: file.appliances,
    parts: file.parts,
    visits,
    moves: [...book.move.values()].filter((move) => move.unit === file.unit.id),
    openPoints: [...book.openPoint.values()].filter((point) => point.unit === file.unit.id),
    advice: adviceOf(book, file.unit.id),
  };
  const plain = JSON.parse(JSON.stringify(data)) as never;
  return {
    version: 1,
    title: "Claim file",
    subtitle: [file.site.name, file.point.name, file.unit.name, file.unit.serial].filter(Boolean).join(", "),
    aside: [day(issuedAt), `${visits.length} visits`],
    revision: 1,
    unit: file.unit.id,
    visit: visits.at(-1)?.id ?? "",
    issuedAt,
    inputsMark: freeze(plain).mark,
    temperatureForm: file.unit.temperatureForm ?? "",
    assessment: null,
    inputs: plain,
    blocks: blocksOf(request, visits),
  };
}

const day = (iso: string | undefined): string => (iso ?? "").slice(0, 10);

/** The visits the present owner may see. */
function visitsShown(book: Book, file: UnitFile): readonly KeptVisit[] {
  const from = ownersOf(book, file.site.id).at(-1)?.seesFrom ?? "";
  return file.visits.filter((visit) => day(visit.startedAt) >= from);
}

function blocksOf(request: ClaimRequest, visits: readonly KeptVisit[]): readonly Block[] {
  const { book, file, words } = request;
  return [
    ...list("The unit", unitLines(book, file)),
    ...list("Water when it was fitted", waterLines(visits[0], words)),
    ...list("Limits of the appliances", limitLines(file, words)),
    ...list(
      "History",
      visits.map((visit) => visitLine(visit, words)),
    ),
    ...list("Bypassed", bypassLines(visits)),
    ...list(
      "Parts",
      file.parts.map((part) => partLine(part, words)),
    ),
    ...list("Advice given and refused", adviceLines(request, visits)),
    ...list("Records issued", recordLines(book, file)),
    { kind: "paragraph", text: words.doesNotTestFor },
    {
      kind: "paragraph",
      quiet: true,
      text: "What is not listed was not read or not written. The data beside this file hold every reading as typed.",
    },
  ];
}

const list = (title: string, items: readonly string[]): readonly Block[] => [
  { kind: "list", title, items: items.length > 0 ? items : ["nothing on record"] },
];

function unitLines(book: Book, file: UnitFile): readonly string[] {
  const { unit } = file;
  const plate = [
    unit.ratedPermeateLPerH && `permeate ${unit.ratedPermeateLPerH.toPrecision(3)} L/h`,
    unit.ratedRejectionPercent && `rejection ${unit.ratedRejectionPercent} %`,
    unit.testPressureKPaGauge && `at ${unit.testPressureKPaGauge.toPrecision(3)} kPa`,
    unit.twoElements && "two elements, the plate for one",
    unit.tankL &&
      `${unit.ventedTank ? "vented tank" : "tank"} ${unit.twoTanks ? "2 × " : ""}${unit.tankL.toPrecision(3)} L`,
  ].filter(Boolean);
  const places = unitHistory(book, unit.id).map(
    (span) =>
      `${book.point.get(span.point)?.name ?? "store"}, ${book.site.get(book.point.get(span.point)?.site ?? "")?.name ?? ""}: from ${span.from || "the beginning"}${span.until ? ` to ${span.until}` : ""} (${span.why})`,
  );
  const owners = ownersOf(book, file.site.id).map((one) => `owner ${one.owner} since ${one.since}`);
  return [`nameplate: ${plate.join(", ") || "not written"}`, ...places, ...owners];
}

const reading = (words: Messages, slot: SlotId, one: Reading): string =>
  `${words.slots[slot]} ${one.notDetected ? "not detected at " : ""}${[one.raw, words.unit(one.unit), one.scale].filter(Boolean).join(" ")}${one.volumeL !== undefined ? ` for ${one.volumeL} L` : ""}`;

function waterLines(first: KeptVisit | undefined, words: Messages): readonly string[] {
  if (!first) return [];
  const slots: readonly SlotId[] = [
    "feedTds",
    "feedTemperature",
    "hardness",
    "chlorineBefore",
    "chlorineAfter",
    "staticPressure",
    "beforeFilterPressure",
  ];
  const read = slots.flatMap((slot) => {
    const one = first.readings.asFound[slot] ?? first.readings.asLeft[slot];
    return one ? [reading(words, slot, one)] : [];
  });
  return read.length === 0 ? [] : [`${day(first.startedAt)}, ${kindOf(first, words)}`, ...read];
}

const kindOf = (visit: KeptVisit, words: Messages): string =>
  (words.visitKinds as Readonly<Record<string, string>>)[visit.kind ?? "annual"] ?? visit.kind ?? "";

const limitLines = (file: UnitFile, words: Messages): readonly string[] =>
  file.appliances.flatMap((appliance) =>
    appliance.limits.map((limit) =>
      [
        `${appliance.name}: ${words.quantity(limit.quantity ?? "tds")}`,
        limit.low !== undefined ? `at least ${limit.low}` : "",
        limit.high !== undefined ? `at most ${limit.high}` : "",
        words.unit(limit.unit ?? ""),
        limit.scale ? `scale ${limit.scale}` : "",
        limit.source ? `(${[limit.source, limit.sourceDate].filter(Boolean).join(", ")})` : "",
      ]
        .filter(Boolean)
        .join(" "),
    ),
  );

function visitLine(visit: KeptVisit, words: Messages): string {
  const read = (["asFound", "asLeft"] as const).flatMap((phase) => {
    const all = Object.entries(visit.readings[phase]).flatMap(([slot, one]) =>
      one.value === null ? [] : [reading(words, slot as SlotId, one)],
    );
    return all.length > 0 ? [`${words.phases[phase].toLowerCase()}: ${all.join("; ")}`] : [];
  });
  const done = Object.entries(visit.work)
    .filter(([, work]) => work.state === "done")
    .map(([task]) => words.taskTitle(task));
  const head = [day(visit.startedAt), kindOf(visit, words), visit.technician].filter(Boolean).join(", ");
  return [head, ...read, done.length > 0 ? `done: ${done.join(", ")}` : ""].filter(Boolean).join(". ");
}

function bypassLines(visits: readonly KeptVisit[]): readonly string[] {
  return visits.flatMap((visit, i) => {
    if (visit.answers.inUse !== "bypassed") return [];
    const { bypass } = visit.answers;
    const kept = bypass?.decision === "keepBypassed";
    const next = visits[i + 1];
    const end = kept
      ? next
        ? `seen again ${day(next.startedAt)}`
        : "no later visit"
      : "put in use that day";
    return [
      [
        `found bypassed ${day(visit.startedAt)}`,
        bypass ? `${bypass.name}, ${bypass.role}: ${kept ? "stays bypassed" : "put in use"}` : "nobody asked",
        bypass?.until ? `allowed until ${bypass.until}` : "",
        bypass?.seal ? `seal ${bypass.seal}` : "",
        end,
      ]
        .filter(Boolean)
        .join("; "),
    ];
  });
}

const partLine = (part: UnitFile["parts"][number], words: Messages): string =>
  [
    part.role ? words.roles[part.role] : "part",
    `fitted ${part.fittedOn ?? "day not known"}`,
    part.removedOn ? `taken out ${part.removedOn}` : "in service",
    part.lot ? `lot ${part.lot}` : "lot not written",
    part.serial ? `serial ${part.serial}` : "",
  ]
    .filter(Boolean)
    .join(", ");

/** Advice as later kinds of records may keep it; a book without that shelf has none. */
interface KeptAdvice {
  readonly unit?: string;
  readonly text?: string;
  readonly name?: string;
  readonly role?: string;
  readonly decision?: string;
  readonly until?: string;
  readonly at?: string;
}

function adviceOf(book: Book, unit: string): readonly Kept<KeptAdvice>[] {
  const shelf = (book as { readonly advice?: ReadonlyMap<string, Kept<KeptAdvice>> }).advice;
  return [...(shelf?.values() ?? [])].filter((one) => one.unit === unit);
}

function adviceLines({ book, file, words }: ClaimRequest, visits: readonly KeptVisit[]): readonly string[] {
  const shown = new Set(visits.map((visit) => visit.id));
  const given = adviceOf(book, file.unit.id).map((one) =>
    [
      day(one.at),
      one.text,
      [one.name, one.role].filter(Boolean).join(", "),
      one.decision,
      one.until && `until ${one.until}`,
    ]
      .filter(Boolean)
      .join("; "),
  );
  const optional = visits.flatMap((visit) => {
    const said = visit.answers.roOptional;
    return said ? [`${day(visit.startedAt)}; RO optional; ${said.name}, ${said.role}; ${said.decision}`] : [];
  });
  const points = [...book.openPoint.values()]
    .filter((point) => point.unit === file.unit.id && shown.has(point.openedVisit ?? ""))
    .map((point) => {
      const opened = day(book.visit.get(point.openedVisit ?? "")?.startedAt);
      const isSettled = point.closedVisit || point.closedOn || point.refusedBy;
      const settled = isSettled ? words.settledPoint(point) : "still open";
      return [opened, words.openPoint(point), point.owner, settled].filter(Boolean).join("; ");
    });
  return [...given, ...optional, ...points];
}

const recordLines = (book: Book, file: UnitFile): readonly string[] =>
  [...book.serviceRecord.values()]
    .filter((record) => record.unit === file.unit.id)
    .sort((a, b) => ((a.issuedAt ?? "") < (b.issuedAt ?? "") ? -1 : 1))
    .map((record) => `${day(record.issuedAt)}, revision ${record.revision}: mark ${record.mark}`);
