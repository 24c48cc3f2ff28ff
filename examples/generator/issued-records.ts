import { assess } from "@tapside/assessment";
import { bookOf, type Change, EMPTY_STATE, fold, freeze, type UnitFile, unitFile } from "@tapside/records";
import { buildRecord } from "@tapside/report";
import { en } from "@tapside/words/en";
import type { Edit } from "./unit-records.ts";

/** Every so many generated units the last visit's record was issued. */
const ISSUED_EVERY = 17;

/** Service records issued at the end of some visits. */
export function issuedRecords(changes: readonly Change[], generated: readonly Edit[]): readonly Edit[] {
  const book = bookOf(fold(EMPTY_STATE, changes));
  const units = generated.filter((edit) => edit.kind === "unit").map((edit) => edit.record);
  return units
    .filter((_, i) => i % ISSUED_EVERY === 0)
    .flatMap((id) => {
      const file = unitFile(book, id);
      const visit = file?.visits.at(-1);
      return file && visit?.endedAt ? [issuedRecord(file, visit.id, visit.endedAt)] : [];
    });
}

function issuedRecord(file: UnitFile, visitId: string, issuedAt: string): Edit {
  const context = { asOf: issuedAt, timeZone: "Europe/London", settings: { technician: "J. Orme" } };
  const content = buildRecord({
    file,
    visitId,
    assessment: assess(file, visitId, context),
    words: en,
    issuedAt,
    timeZone: context.timeZone,
    settings: context.settings,
    revision: 1,
  });
  const { json, mark } = freeze(content);
  return {
    kind: "serviceRecord",
    record: `${visitId}:record:1`,
    day: issuedAt.slice(0, 10),
    fields: { visit: visitId, unit: file.unit.id, revision: 1, mark, json, issuedAt },
  };
}
