import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { assess } from "@tapside/assessment";
import { dueList } from "@tapside/book";
import { bookOf, type Change, EMPTY_STATE, fold, importFile, unitFile } from "@tapside/records";
import { expect, it } from "vitest";

/** A slip of the thumb in any one number of a book: it is judged, or named, but never breaks the judgement or comes out as NaN. */
const text = readFileSync(
  fileURLToPath(new URL("../examples/one-visit.tapside.json", import.meta.url)),
  "utf8",
);
const file = importFile(text);
if (file.kind !== "known") throw new Error(JSON.stringify(file));
const changes: readonly Change[] = file.value.changes;

const ABSURD = [0, -1, 1e-9, 999_999, 1e9];

interface Slip {
  readonly name: string;
  readonly changes: readonly Change[];
}

const isReading = (value: unknown): value is { readonly value: number } =>
  typeof (value as { readonly value?: unknown } | null)?.value === "number";

const slips: readonly Slip[] = changes.flatMap((change, i) =>
  Object.entries(change.fields).flatMap(([field, value]) =>
    typeof value !== "number" && !isReading(value)
      ? []
      : ABSURD.map((absurd) => ({
          name: `${change.kind} ${field} = ${absurd}`,
          changes: changes.with(i, {
            ...change,
            fields: {
              ...change.fields,
              [field]: isReading(value) ? { ...value, value: absurd, raw: String(absurd) } : absurd,
            },
          }),
        })),
  ),
);

/** Where something stands that is no finite number. */
function lost(value: unknown, path = ""): readonly string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([name, inner]) => lost(inner, `${path}.${name}`));
}

it("a book of many numbers is tried", () => expect(slips.length).toBeGreaterThan(200));

it.each(slips)("$name", ({ changes: slipped }) => {
  const book = bookOf(fold(EMPTY_STATE, slipped));
  const visit = [...book.visit.values()].at(-1);
  const unit = unitFile(book, visit!.unit!);
  const context = {
    asOf: "2025-11-20T11:00:00Z",
    timeZone: "UTC",
    settings: book.settings.get("settings") ?? {},
  };
  expect(lost(assess(unit!, visit!.id, context))).toEqual([]);
  expect(lost(dueList(book, "2026-01-01").map(({ reasons, overdue }) => ({ reasons, overdue })))).toEqual([]);
});
