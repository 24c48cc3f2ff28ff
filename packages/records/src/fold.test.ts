import fc from "fast-check";
import { expect, test } from "vitest";
import { bookInStretches, bookOf } from "./book-of.ts";
import type { Change } from "./change.ts";
import { EMPTY_STATE, fold, replacedBy, rivalsOf } from "./fold.ts";
import { NO_STAMP, nextStamp, observeStamp } from "./hybrid-clock.ts";

const SEED = { seed: 20260302, numRuns: 300 };

const change: fc.Arbitrary<Change> = fc
  .record({
    n: fc.nat(10_000),
    record: fc.constantFrom("r1", "r2", "r3"),
    kind: fc.constantFrom("site", "visit", "unheardOf"),
    fields: fc.dictionary(
      fc.constantFrom("name", "notes", "$gone", "reading:asFound:feedTds", "__proto__"),
      fc.oneof(fc.boolean(), fc.nat(9), fc.constant(null), fc.constant({ raw: "5", value: 5, unit: "psi" })),
    ),
    minute: fc.nat(5),
    device: fc.constantFrom("d1", "d2", "d3"),
    over: fc.array(fc.nat(10_000), { maxLength: 2 }),
  })
  .map(({ n, minute, over, ...rest }) => ({
    ...rest,
    id: `c${n}`,
    at: `2026-03-02T08:0${minute}:00.000Z/0000`,
    schema: 1,
    over: over.map((other) => `c${other}`),
  }));

const changes = fc.uniqueArray(change, { selector: (one) => one.id, maxLength: 25 });

function runToEnd<T>(steps: Generator<void, T>): T {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

const sorted = (state: ReturnType<typeof fold>) =>
  [...state.records.values()]
    .map((record) => ({ ...record, fields: [...record.fields].sort(([a], [b]) => (a < b ? -1 : 1)) }))
    .sort((a, b) => (a.id < b.id ? -1 : 1));

test("order, duplicates and batching never change the fold", () => {
  fc.assert(
    fc.property(changes, fc.infiniteStream(fc.nat(1000)), (all, luck) => {
      const draw = () => luck.next().value as number;
      const mixed = [...all, ...all.filter(() => draw() % 3 === 0)]
        .map((one) => [draw(), one] as const)
        .sort(([a], [b]) => a - b)
        .map(([, one]) => one);
      let bitByBit = EMPTY_STATE;
      for (let i = 0; i < mixed.length; ) {
        const size = 1 + (draw() % 4);
        bitByBit = fold(bitByBit, mixed.slice(i, i + size));
        i += size;
      }
      expect(sorted(bitByBit)).toEqual(sorted(fold(EMPTY_STATE, all)));
    }),
    SEED,
  );
});

test("a book brought up to date equals a book built anew", () => {
  fc.assert(
    fc.property(changes, fc.nat(25), (all, cut) => {
      const state = fold(EMPTY_STATE, all.slice(0, cut));
      const later = fold(state, all.slice(cut));
      expect(bookOf(later, { state, book: bookOf(state) })).toEqual(bookOf(later));
      expect(runToEnd(bookInStretches(later))).toEqual(bookOf(later));
    }),
    SEED,
  );
});

test("an edit made after seeing another always wins over it, at any clock skew", () => {
  const DAY = 24 * 3600 * 1000;
  fc.assert(
    fc.property(
      fc.array(fc.record({ device: fc.nat(2), wallMs: fc.integer({ min: -900 * DAY, max: 900 * DAY }) }), {
        minLength: 2,
        maxLength: 20,
      }),
      (edits) => {
        const clocks = [NO_STAMP, NO_STAMP, NO_STAMP];
        let state = EMPTY_STATE;
        let seen = NO_STAMP;
        for (const [n, { device, wallMs }] of edits.entries()) {
          const now = Date.UTC(2026, 2, 2) + wallMs;
          const clock = nextStamp(observeStamp(clocks[device]!, seen, now).newest, now);
          expect(clock > seen).toBe(true);
          clocks[device] = clock;
          const name = `d${device}`;
          const over = replacedBy(name, state.records.get("r"), ["name"]);
          const edit = {
            id: `c${n}`,
            record: "r",
            kind: "site",
            fields: { name: n },
            at: clock,
            device: name,
          };
          state = fold(state, [{ ...edit, schema: 1, over }]);
          seen = clock;
          const field = state.records.get("r")!.fields.get("name")!;
          expect(field.value).toBe(n);
          expect(rivalsOf(field)).toEqual([]);
        }
      },
    ),
    SEED,
  );
});

const edit = (id: string, device: string, value: string, over: readonly string[] = []): Change => ({
  id,
  record: "r",
  kind: "site",
  fields: { name: value },
  at: `2026-03-02T08:00:0${id.slice(1)}.000Z/0000`,
  device,
  schema: 1,
  over,
});

test("concurrent edits are shown, and go once somebody who saw them writes again", () => {
  const apart = fold(EMPTY_STATE, [edit("c1", "a", "Elm"), edit("c2", "b", "Oak")]);
  const field = apart.records.get("r")!.fields.get("name")!;
  expect(field.value).toBe("Oak");
  expect(rivalsOf(field).map((held) => held.value)).toEqual(["Elm"]);
  const over = replacedBy("c", apart.records.get("r"), ["name"]);
  const settled = fold(apart, [edit("c3", "c", "Ash", over)]);
  expect(rivalsOf(settled.records.get("r")!.fields.get("name")!)).toEqual([]);
});

test("a field set to null is taken back, a retracted record leaves the book", () => {
  const made = fold(EMPTY_STATE, [edit("c1", "a", "Elm")]);
  const nulled = fold(made, [{ ...edit("c2", "a", ""), fields: { name: null } }]);
  expect(bookOf(nulled).site.get("r")).toEqual({ id: "r" });
  const gone = fold(nulled, [{ ...edit("c3", "a", ""), fields: { $gone: true } }]);
  expect(bookOf(gone).site.has("r")).toBe(false);
});
