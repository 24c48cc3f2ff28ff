import { readFileSync } from "node:fs";
import { assess } from "@tapside/assessment";
import { bookOf, EMPTY_STATE, fold, importFile, type UnitFile, unitFile } from "@tapside/records";
import type { Messages } from "@tapside/words";
import { en } from "@tapside/words/en";
import type { RecordContent } from "../block.ts";
import { buildRecord } from "../build-record.ts";
import { buildClaim } from "../claim.ts";

const here = (path: string) => new URL(path, import.meta.url);
const content = importFile(readFileSync(here("../../../../examples/larkmoor.tapside.json"), "utf8"));
if (content.kind !== "known") throw new Error("the demo district does not import");
export const book = bookOf(fold(EMPTY_STATE, content.value.changes));

export const demoUnit = (n: number): UnitFile => unitFile(book, `demo:${n}:unit`)!;
/** The units written by hand; the generated ones are tried where they are made. */
export const DEMO_UNITS = Array.from({ length: 10 }, (_, i) => i + 1);

const font = (name: string) => new Uint8Array(readFileSync(here(`../../../pictures/fonts/${name}`)));
export const FONTS = { regular: font("B612-Regular.otf"), bold: font("B612-Bold.otf") };

/** The record of a unit's last visit, after `edit` of the unit's file. */
export function demoRecord(
  n: number,
  edit: (file: UnitFile) => UnitFile = (file) => file,
  words: Messages = en,
): RecordContent {
  const file = edit(demoUnit(n));
  const visit = file.visits.at(-1)!;
  const asOf = visit.endedAt!;
  const assessment = assess(file, visit.id, { asOf, timeZone: "UTC", settings: {} });
  return buildRecord({
    file,
    visitId: visit.id,
    assessment,
    words,
    issuedAt: asOf,
    timeZone: "UTC",
    revision: 1,
    settings: {},
  });
}

/** The claim file of a unit as it stood on a day. */
export const demoClaim = (n: number, edit: (file: UnitFile) => UnitFile, words: Messages): RecordContent =>
  buildClaim({ book, file: edit(demoUnit(n)), words, issuedAt: "2026-11-25T00:00:00Z" });

/** The same file with its last visit changed. */
export const withLastVisit = (
  file: UnitFile,
  edit: (visit: UnitFile["visits"][number]) => UnitFile["visits"][number],
): UnitFile => ({ ...file, visits: [...file.visits.slice(0, -1), edit(file.visits.at(-1)!)] });
