import { assess } from "@tapside/assessment";
import { neighboursOfVisit } from "@tapside/book";
import { freeze, unitFile } from "@tapside/records";
import { buildRecord, type RecordContent } from "@tapside/report";
import { contextNow } from "./context-now.ts";
import { writesAtTheEnd } from "./finish-visit.ts";
import type { OpenVisit } from "./use-visit.ts";

export interface Issued {
  readonly content: RecordContent;
  readonly mark: string;
}

/** Ends the visit and freezes its service record. A second time makes the next revision. */
export async function issueRecord(open: OpenVisit): Promise<Issued> {
  const { live, visit } = open;
  const issuedAt = new Date().toISOString();
  if (!visit.closed) await live.writeAll(writesAtTheEnd(open, issuedAt), { undoable: false });
  const { book } = live.snapshot();
  const file = unitFile(book, open.file.unit.id)!;
  const context = contextNow(book);
  const before = recordsOf(open).at(-1);
  const { countsInBook, saidCauses } = await import("@tapside/diagnosis");
  const { messagesIn } = await import("@tapside/words/every-language");
  const { sizesInLanguage } = await import("@tapside/words/causes");
  const { kitchenInLanguage } = await import("@tapside/words/kitchen");
  const { kitchenDay } = await import("@tapside/report/kitchen-day");
  const words = messagesIn(file.site.language);
  const content = buildRecord({
    file,
    neighbours: neighboursOfVisit(book, file, visit.id),
    visitId: visit.id,
    assessment: assess(file, visit.id, context),
    words,
    kitchenDay: kitchenDay(file, context, { words, kitchen: kitchenInLanguage(file.site.language) }),
    issuedAt,
    timeZone: context.timeZone,
    settings: context.settings,
    causes: sizesInLanguage(await saidCauses(open, countsInBook(book.causeCounts)), file.site.language),
    revision: 1 + (before?.revision ?? 0),
    ...(before?.mark && { replaces: { revision: before.revision ?? 1, mark: before.mark } }),
  });
  const { json, mark } = freeze(content);
  await live.write(
    "serviceRecord",
    `${visit.id}:record:${content.revision}`,
    { visit: visit.id, unit: file.unit.id, revision: content.revision, mark, json, issuedAt },
    { undoable: false },
  );
  await live.closeVisit(visit.id);
  return { content, mark };
}

/** The records issued for a visit, oldest first. */
export const recordsOf = (open: OpenVisit) =>
  [...open.live.snapshot().book.serviceRecord.values()]
    .filter((record) => record.visit === open.visit.id)
    .sort((a, b) => (a.revision ?? 0) - (b.revision ?? 0));
