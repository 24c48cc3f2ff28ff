import { type Change, exportFile, NO_STAMP, nextStamp } from "@tapside/records";
import { INSTRUMENTS } from "./by-hand/instruments.ts";
import { unitEdits } from "./by-hand/unit-edits.ts";
import { type DemoUnit, DISTRICT } from "./district.ts";
import { generatedDistrict } from "./generator/district-records.ts";
import { issuedRecords } from "./generator/issued-records.ts";
import type { Edit } from "./generator/unit-records.ts";

/** The changes of these edits in the order of their days; the same edits give the same changes. */
function changesOf(edits: readonly Edit[]): readonly Change[] {
  let stamp = NO_STAMP;
  const inOrder = [...edits].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
  return inOrder.map(({ kind, record, day, fields }, i): Change => {
    stamp = nextStamp(stamp, Date.parse(`${day}T09:00:00Z`));
    return {
      id: `demo-${String(i + 1).padStart(5, "0")}`,
      record,
      kind,
      fields,
      at: stamp,
      device: "demo",
      schema: 1,
    };
  });
}

/** An export file of these units; the same units give the same text. */
function demoFile(units: readonly DemoUnit[], more: readonly Edit[] = []): string {
  const edits = [...INSTRUMENTS, ...units.flatMap(unitEdits), ...more];
  return exportFile({ changes: changesOf([...edits, ...issuedRecords(changesOf(edits), more)]), photos: [] });
}

/** Ten units written by hand and fifty from the generator: 40 kitchens, three years. */
export function larkmoor(seed: string) {
  const generated = generatedDistrict(seed);
  return {
    book: demoFile(DISTRICT, generated.edits),
    truth: `${JSON.stringify(generated.truth)}\n`,
  };
}

const SEED = "Larkmoor";

/** File name and text of every example. */
export function examples(): Readonly<Record<string, string>> {
  const { book, truth } = larkmoor(SEED);
  return {
    "larkmoor.tapside.json": book,
    "larkmoor.truth.json": truth,
    "one-visit.tapside.json": demoFile(DISTRICT.slice(0, 1)),
  };
}
