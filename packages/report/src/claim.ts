import type { Book, UnitFile } from "@tapside/records";
import { freeze } from "@tapside/records";
import type { Messages } from "@tapside/words";
import type { Block, RecordContent } from "./block.ts";
import { adviceLines } from "./internal/claim-advice.ts";
import { type ClaimShown, claimShown } from "./internal/claim-shown.ts";
import { limitLines, partLine, unitLines } from "./internal/claim-unit.ts";
import { bypassLines, visitLine, waterLines } from "./internal/claim-visits.ts";
import { dayOf } from "./internal/day-of.ts";

export interface ClaimRequest {
  readonly book: Book;
  readonly file: UnitFile;
  readonly words: Messages;
  /** ISO instant. */
  readonly issuedAt: string;
}

/**
 * The claim file of one unit: what its water was when it was fitted, its history, when it was bypassed, what was advised and
 * refused, which parts with lots, and the marks of the records issued. Nothing from before the present owner's cut-off is in it,
 * in words or data.
 */
export function buildClaim(request: ClaimRequest): RecordContent {
  const { book, file, issuedAt } = request;
  const shown = claimShown(book, file);
  const { visits } = shown;
  const data = {
    unit: file.unit,
    point: file.point,
    site: file.site,
    appliances: file.appliances,
    parts: shown.parts,
    visits,
    places: shown.places,
    openPoints: shown.openPoints,
  };
  const plain = JSON.parse(JSON.stringify(data)) as never;
  const { claim } = request.words;
  return {
    version: 1,
    language: request.words.language,
    title: claim.title,
    subtitle: [file.site.name, file.point.name, file.unit.name, file.unit.serial].filter(Boolean).join(", "),
    aside: [dayOf(issuedAt), claim.visits(visits.length)],
    revision: 1,
    unit: file.unit.id,
    visit: visits.at(-1)?.id ?? "",
    issuedAt,
    inputsMark: freeze(plain).mark,
    temperatureForm: file.unit.temperatureForm ?? "",
    assessment: null,
    inputs: plain,
    blocks: blocksOf(request, shown),
  };
}

function blocksOf({ book, file, words }: ClaimRequest, shown: ClaimShown): readonly Block[] {
  const { visits } = shown;
  const { titles, nothing, notListed } = words.claim;
  const list = (title: string, items: readonly string[]): readonly Block[] => [
    { kind: "list", title, items: items.length > 0 ? items : [nothing] },
  ];
  return [
    ...list(titles.unit, unitLines(book, file, shown, words)),
    ...list(titles.water, waterLines(visits[0], words)),
    ...list(titles.limits, limitLines(file, words)),
    ...list(
      titles.history,
      visits.map((visit) => visitLine(visit, words)),
    ),
    ...list(titles.bypassed, bypassLines(visits, words.claim)),
    ...list(
      titles.parts,
      shown.parts.map((part) => partLine(part, words)),
    ),
    ...list(titles.advice, adviceLines(book, shown, words)),
    ...list(
      titles.records,
      shown.records.map((one) => words.claim.record(dayOf(one.issuedAt), one.revision ?? 1, one.mark ?? "")),
    ),
    { kind: "paragraph", text: words.doesNotTestFor },
    {
      kind: "paragraph",
      quiet: true,
      text: notListed,
    },
  ];
}
