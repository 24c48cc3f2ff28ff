import { ownersOf, unitHistory } from "@tapside/book";
import type { Book, Kept, KeptVisit, Reading, SlotId, UnitFile } from "@tapside/records";
import { freeze } from "@tapside/records";
import { type ClaimWords, inSign, type Messages } from "@tapside/words";
import type { Block, RecordContent } from "./block.ts";
import { plateSaid } from "./plate-said.ts";

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
  const { claim } = request.words;
  return {
    version: 1,
    language: request.words.language,
    title: claim.title,
    subtitle: [file.site.name, file.point.name, file.unit.name, file.unit.serial].filter(Boolean).join(", "),
    aside: [day(issuedAt), claim.visits(visits.length)],
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
  const { titles, nothing, notListed } = words.claim;
  const list = (title: string, items: readonly string[]): readonly Block[] => [
    { kind: "list", title, items: items.length > 0 ? items : [nothing] },
  ];
  return [
    ...list(titles.unit, unitLines(book, file, words)),
    ...list(titles.water, waterLines(visits[0], words)),
    ...list(titles.limits, limitLines(file, words)),
    ...list(
      titles.history,
      visits.map((visit) => visitLine(visit, words)),
    ),
    ...list(titles.bypassed, bypassLines(visits, words.claim)),
    ...list(
      titles.parts,
      file.parts.map((part) => partLine(part, words)),
    ),
    ...list(titles.advice, adviceLines(request, visits)),
    ...list(titles.records, recordLines(book, file, words.claim)),
    { kind: "paragraph", text: words.doesNotTestFor },
    {
      kind: "paragraph",
      quiet: true,
      text: notListed,
    },
  ];
}

function unitLines(book: Book, file: UnitFile, words: Messages): readonly string[] {
  const { unit } = file;
  const { claim: says } = words;
  const places = unitHistory(book, unit.id).map((span) => {
    const point = book.point.get(span.point);
    const site = book.site.get(point?.site ?? "")?.name ?? "";
    return says.place(point?.name ?? says.store, site, span.from ?? "", span.until ?? "", span.why ?? "");
  });
  const owners = ownersOf(book, file.site.id).map((one) => says.owner(one.owner, one.since));
  return [says.nameplate(plateSaid(unit, words) || says.notWritten), ...places, ...owners];
}

function reading(words: Messages, slot: SlotId, one: Reading): string {
  const value = [inSign(one.raw, words.decimalSign), words.unit(one.unit), one.scale]
    .filter(Boolean)
    .join(" ");
  return [
    words.slots[slot],
    one.notDetected ? words.claim.notDetectedAt(value) : value,
    one.volumeL !== undefined ? words.claim.inVolume(one.volumeL) : "",
  ]
    .filter(Boolean)
    .join(" ");
}

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
        limit.low !== undefined ? words.claim.atLeast(limit.low) : "",
        limit.high !== undefined ? words.claim.atMost(limit.high) : "",
        words.unit(limit.unit ?? ""),
        limit.scale ? words.claim.scale(limit.scale) : "",
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
  return [head, ...read, done.length > 0 ? words.claim.done(done.join(", ")) : ""].filter(Boolean).join(". ");
}

function bypassLines(visits: readonly KeptVisit[], says: ClaimWords): readonly string[] {
  return visits.flatMap((visit, i) => {
    if (visit.answers.inUse !== "bypassed") return [];
    const { bypass } = visit.answers;
    const kept = bypass?.decision === "keepBypassed";
    const next = visits[i + 1];
    const end = kept
      ? next
        ? says.seenAgain(day(next.startedAt))
        : says.noLaterVisit
      : says.putInUseThatDay;
    return [
      [
        says.foundBypassed(day(visit.startedAt)),
        bypass
          ? `${bypass.name}, ${bypass.role}: ${kept ? says.staysBypassed : says.putInUse}`
          : says.nobodyAsked,
        bypass?.until ? says.allowedUntil(bypass.until) : "",
        bypass?.seal ? says.seal(bypass.seal) : "",
        end,
      ]
        .filter(Boolean)
        .join("; "),
    ];
  });
}

const partLine = (part: UnitFile["parts"][number], words: Messages): string =>
  [
    part.role ? words.roles[part.role] : words.claim.part,
    words.claim.fitted(part.fittedOn ?? words.claim.dayNotKnown),
    part.removedOn ? words.claim.takenOut(part.removedOn) : words.claim.inService,
    part.lot ? words.claim.lot(part.lot) : words.claim.noLot,
    part.serial ? words.claim.serial(part.serial) : "",
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
      one.decision && (words.claim.decisions[one.decision] ?? one.decision),
      one.until && words.claim.until(one.until),
    ]
      .filter(Boolean)
      .join("; "),
  );
  const optional = visits.flatMap((visit) => {
    const said = visit.answers.roOptional;
    if (!said) return [];
    const { optional: title, decisions } = words.claim;
    const decision = decisions[said.decision] ?? said.decision;
    return [`${day(visit.startedAt)}; ${title}; ${said.name}, ${said.role}; ${decision}`];
  });
  const points = [...book.openPoint.values()]
    .filter((point) => point.unit === file.unit.id && shown.has(point.openedVisit ?? ""))
    .map((point) => {
      const opened = day(book.visit.get(point.openedVisit ?? "")?.startedAt);
      const isSettled = point.closedVisit || point.closedOn || point.refusedBy;
      const settled = isSettled ? words.settledPoint(point) : words.claim.stillOpen;
      return [opened, words.openPoint(point), point.owner, settled].filter(Boolean).join("; ");
    });
  return [...given, ...optional, ...points];
}

const recordLines = (book: Book, file: UnitFile, says: ClaimWords): readonly string[] =>
  [...book.serviceRecord.values()]
    .filter((record) => record.unit === file.unit.id)
    .sort((a, b) => ((a.issuedAt ?? "") < (b.issuedAt ?? "") ? -1 : 1))
    .map((record) => says.record(day(record.issuedAt), record.revision ?? 1, record.mark ?? ""));
