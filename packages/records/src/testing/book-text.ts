import type { KeptVisit, UnitFile } from "../book.ts";
import type { Change, FieldValue } from "../change.ts";
import { exportFile } from "../export-file.ts";
import { uuidV7 } from "../uuid-v7.ts";

type Fields = Readonly<Record<string, FieldValue>>;
export type KeptRecord = readonly [kind: string, id: string, fields: Fields];

/** Records as an exported file, each written a second after the one before. */
export function bookText(records: readonly KeptRecord[]): string {
  const changes = records.map(([kind, record, fields], i): Change => {
    const at = Date.UTC(2026, 0, 5, 8, 0, i);
    return {
      id: uuidV7(at, new Uint8Array(10).fill(i + 1)),
      record,
      kind,
      fields,
      at: `${new Date(at).toISOString()}/0000`,
      device: "small-book",
      schema: 1,
    };
  });
  return exportFile({ changes, photos: [] });
}

const kept = (kind: string, { id, ...fields }: { readonly id: string }): KeptRecord => [
  kind,
  id,
  fields as unknown as Fields,
];

/** The records behind a unit's file. Every reading is a change of its own: of a visit, the last comes first. */
export function recordsOf(file: UnitFile): readonly KeptRecord[] {
  return [
    kept("site", file.site),
    kept("point", { ...file.point, site: file.site.id } as { id: string }),
    kept("unit", { ...file.unit, point: file.point.id } as { id: string }),
    ...file.appliances.map(({ limits: _, ...one }) =>
      kept("appliance", { ...one, point: file.point.id } as { id: string }),
    ),
    ...file.parts.map((part) => kept("part", part)),
    ...file.visits.flatMap(changesOf),
  ];
}

function changesOf(visit: KeptVisit): readonly KeptRecord[] {
  const { id, readings, answers, kind, unit, point, startedAt } = visit;
  const fields = [
    ...Object.entries(readings.asFound).map(([slot, one]) => [`reading:asFound:${slot}`, one] as const),
    ...Object.entries(answers).map(([name, one]) => [`answer:${name}`, one] as const),
  ];
  return [
    ["visit", id, { kind, unit, point, startedAt } as unknown as Fields],
    ...fields.reverse().map(([name, one]): KeptRecord => ["visit", id, { [name]: one } as unknown as Fields]),
  ];
}
