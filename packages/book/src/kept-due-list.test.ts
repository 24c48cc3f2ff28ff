import {
  type Book,
  bookOf,
  type Change,
  EMPTY_STATE,
  type FieldValue,
  fold,
  GONE,
  NO_STAMP,
  nextStamp,
  SCHEMA,
  type State,
  undoOf,
} from "@tapside/records";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dueList } from "./due-list.ts";
import { keptDueList } from "./kept-due-list.ts";

type Fields = Readonly<Record<string, FieldValue>>;
type Written = readonly [kind: string, record: string, fields: Fields];

const one = <T>(...of: readonly T[]) => fc.constantFrom(...of);
const day = fc.tuple(one(2024, 2025, 2026), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 }));
const iso = day.map(([y, m, d]) => `${y}-${String(m).padStart(2, "0")}-${String(d).padStart(2, "0")}`);
const unit = one("u1", "u2", "u3");
const metered = fc.tuple(fc.integer({ min: 0, max: 90 }), iso).map(([value, on]) => ({
  raw: String(value),
  value,
  unit: "m³",
  port: "meter",
  at: `${on}T08:00:00Z`,
}));

/** One record as somebody might write it: every kind the list stands on, and one it does not. */
const written: fc.Arbitrary<Written> = fc.oneof(
  fc.record({ name: one("Mill Lane", "Ash Row") }).map((f): Written => ["site", "s", f]),
  fc.record({ site: one("s", "elsewhere") }).map((f): Written => ["point", "p", f]),
  fc
    .tuple(unit, fc.record({ point: one("p", ""), name: one("A", "B") }))
    .map(([u, f]): Written => ["unit", u, f]),
  fc
    .tuple(one("k1", "k2", "k3"), unit, one("carbon", "element", "sediment"), iso, one(null, 2, 57000))
    .map(
      ([id, u, role, fittedOn, ratedLitres]): Written => [
        "part",
        id,
        { unit: u, role, fittedOn, ratedLitres, meterAtFittingM3: 3 },
      ],
    ),
  fc
    .tuple(one("v1", "v2", "v3", "v4"), unit, iso, metered, fc.boolean())
    .map(
      ([id, u, on, reading, closed]): Written => [
        "visit",
        id,
        { unit: u, startedAt: `${on}T07:00:00Z`, closed, "reading:asFound:waterMeter": reading },
      ],
    ),
  fc
    .tuple(one("o1", "o2"), unit, one(null, "2026-01-05"))
    .map(([id, u, closedOn]): Written => ["openPoint", id, { unit: u, code: "fillingNotSeen", closedOn }]),
  fc
    .tuple(one("m1", "m2"), unit, one("lent", "moved"), iso)
    .map(([id, u, why, on]): Written => ["move", id, { unit: u, why, on, until: "2026-09-01" }]),
  fc.record({ name: one("Oven", "Ice") }).map((f): Written => ["appliance", "a", { point: "p", ...f }]),
  fc.record({ name: one("Steam", "Cold") }).map((f): Written => ["model", "ty", f]),
  fc.record({ kind: one("tds", "gauge") }).map((f): Written => ["instrument", "i", f]),
  fc
    .record({ [GONE]: fc.boolean() })
    .chain((f) =>
      one<readonly [string, string]>(
        ["unit", "u1"],
        ["visit", "v2"],
        ["part", "k1"],
        ["openPoint", "o1"],
      ).map(([kind, id]): Written => [kind, id, f]),
    ),
);

const step = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      do: fc.constant("write" as const),
      all: fc.array(written, { minLength: 1, maxLength: 4 }),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({ do: fc.constant("undo" as const), all: fc.constant([] as Written[]) }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      do: fc.constant("import" as const),
      all: fc.array(written, { minLength: 5, maxLength: 15 }),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({ do: fc.constant("nextDay" as const), all: fc.constant([] as Written[]) }),
  },
);

describe("the kept due list", () => {
  it("is at every moment what judging the whole book gives: edits, imports, undo, deletions, days going by", () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 25 }), (steps) => {
        const { rows: kept } = keptDueList();
        let [at, n, today] = [NO_STAMP as string, 0, Date.parse("2026-03-01")];
        let state: State = EMPTY_STATE;
        let book: Book = bookOf(state);
        const undoable: { readonly before: State; readonly change: Change }[] = [];
        const take = (all: readonly Written[], device: string) => {
          const changes = all.map(([kind, record, fields]): Change => {
            at = nextStamp(at, 1000 + n);
            return { id: `c${n++}`, record, kind, fields, at, device, schema: SCHEMA };
          });
          const before = state;
          state = fold(state, changes);
          book = bookOf(state, { state: before, book });
          return changes.map((change) => ({ before, change }));
        };
        for (const { do: what, all } of steps) {
          if (what === "nextDay") today += 24 * 3600 * 1000;
          else if (what === "undo") {
            const back = undoable.pop();
            if (back)
              take([[back.change.kind, back.change.record, undoOf(back.change, back.before, state)]], "here");
          } else {
            const taken = take(all, what === "import" ? "there" : "here");
            if (what === "write") undoable.push(taken[0]!);
          }
          const on = new Date(today).toISOString().slice(0, 10);
          expect(kept(book, on)).toEqual(dueList(bookOf(state), on));
        }
      }),
      { numRuns: 150 },
    );
  });

  it("judges a unit again only when something of its own has changed", () => {
    const change = (id: string, kind: string, record: string, fields: Fields): Change => ({
      id,
      record,
      kind,
      fields,
      at: nextStamp(NO_STAMP, Number(id)),
      device: "d",
      schema: SCHEMA,
    });
    const state = fold(EMPTY_STATE, [
      change("1", "unit", "u1", { name: "A" }),
      change("2", "unit", "u2", { name: "B" }),
    ]);
    const book = bookOf(state);
    const { rows: kept } = keptDueList();
    const [a, b] = kept(book, "2026-03-01");
    const later = fold(state, [
      change("3", "part", "k", { unit: "u2", role: "carbon", fittedOn: "2025-01-01" }),
    ]);
    const again = kept(bookOf(later, { state, book }), "2026-03-01");
    expect(again.find((row) => row.unit === "u1")).toBe(a);
    expect(again.find((row) => row.unit === "u2")).not.toBe(b);
    expect(again[0]?.unit).toBe("u2");
  });

  it("worked out a stretch at a time is the same, also when the book goes on meanwhile", () => {
    const units = Array.from({ length: 65 }, (_, i) => `u${i}`);
    const state = fold(
      EMPTY_STATE,
      units.map(
        (u, i): Change => ({
          id: `c${i}`,
          record: u,
          kind: "unit",
          fields: { name: u },
          at: nextStamp(NO_STAMP, i + 1),
          device: "d",
          schema: SCHEMA,
        }),
      ),
    );
    const book = bookOf(state);
    const kept = keptDueList();
    const work = kept.stretches(book, "2026-03-01");
    expect(work.next().done).toBe(false);
    const later = bookOf({ records: new Map([...state.records].slice(0, 40)) });
    expect(kept.rows(later, "2026-03-01")).toEqual(dueList(later, "2026-03-01"));
    while (!work.next().done);
    expect(kept.rows(later, "2026-03-01")).toEqual(dueList(later, "2026-03-01"));
    expect(kept.rows(book, "2026-03-02")).toEqual(dueList(book, "2026-03-02"));
  });
});
