/**
 * Judging a unit with 40 visits, un-throttled, beside a calibration loop of the same run: the first time ever, after one number of the
 * open visit changed (what happens while typing), and with every visit unknown. Prints JSON.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { assess } from "@tapside/assessment";
import {
  bookOf,
  EMPTY_STATE,
  fold,
  importFile,
  type KeptVisit,
  type SlotId,
  type UnitFile,
  unitFile,
} from "@tapside/records";
import { root } from "../tools/ensure-ready.mjs";

const VISITS = 40;
const context = { asOf: "2026-11-25T12:00:00Z", timeZone: "UTC", settings: {} } as const;

/** The demo unit with most visits, its annual visits said again with slightly other readings until there are 40. */
function longHistory(): UnitFile {
  const content = importFile(readFileSync(join(root, "examples/larkmoor.tapside.json"), "utf8"));
  if (content.kind !== "known") throw new Error(content.kind);
  const book = bookOf(fold(EMPTY_STATE, content.value.changes));
  const files = [...book.unit.keys()].map((id) => unitFile(book, id)!);
  const file = files.reduce((a, b) => (fullVisits(b).length > fullVisits(a).length ? b : a));
  const full = fullVisits(file);
  const visits = Array.from({ length: VISITS }, (_, i) => ({
    ...turned(full[i % full.length]!, 1 + 0.002 * (i % 11)),
    id: `visit-${i}`,
    startedAt: new Date(Date.UTC(1987 + i, 2, 3)).toISOString(),
  }));
  return { ...file, visits };
}

const fullVisits = (file: UnitFile) =>
  file.visits.filter((visit) => Object.keys(visit.readings.asFound).length >= 10);

const turned = (visit: KeptVisit, factor: number): KeptVisit => ({
  ...visit,
  readings: {
    ...visit.readings,
    asFound: Object.fromEntries(
      Object.entries(visit.readings.asFound).map(([slot, reading]) => [
        slot,
        { ...reading, value: reading.value === null ? null : reading.value * factor },
      ]),
    ),
  },
});

const file = longHistory();
const last = file.visits.at(-1)!;
const slots = Object.keys(last.readings.asFound) as SlotId[];

/** The open visit with one of its numbers typed anew. */
function edited(slot: SlotId, factor: number): UnitFile {
  const { asFound } = last.readings;
  const reading = asFound[slot]!;
  const typed = { ...reading, value: reading.value === null ? null : reading.value * factor };
  const visit = { ...last, readings: { ...last.readings, asFound: { ...asFound, [slot]: typed } } };
  return { ...file, visits: [...file.visits.slice(0, -1), visit] };
}

function milliseconds(task: () => unknown): number {
  const start = performance.now();
  task();
  return performance.now() - start;
}

const median = (times: readonly number[]) => [...times].sort((a, b) => a - b)[times.length >> 1]!;

function calibration() {
  let sum = 0;
  for (let k = 1; k <= 1_000_000; k++) sum += Math.exp(-Math.sqrt(k * 1e-6));
  return sum;
}

const firstMs = milliseconds(() => assess(file, last.id, context));
const bySlot = slots.map((slot) => {
  const files = Array.from({ length: 15 }, (_, i) => edited(slot, 1 + 1e-4 * (i + 1)));
  return { slot, ms: median(files.map((one) => milliseconds(() => assess(one, last.id, context)))) };
});
const dearest = bySlot.reduce((a, b) => (b.ms > a.ms ? b : a));
const unknown = Array.from({ length: 20 }, (_, i) => ({
  ...file,
  visits: file.visits.map((visit) => turned(visit, 1 + 1e-5 * (i + 1))),
}));
const unknownMs = unknown.map((one) => milliseconds(() => assess(one, last.id, context)));
console.log(
  JSON.stringify(
    {
      bench: "assess",
      calibrationMs: median(Array.from({ length: 9 }, () => milliseconds(calibration))),
      visits: file.visits.length,
      afterOneNumberMs: median(bySlot.map((one) => one.ms)),
      afterItsDearestNumberMs: dearest.ms,
      dearestNumber: dearest.slot,
      goalAfterOneNumberMs: 5,
      everyVisitUnknownMs: median(unknownMs),
      firstEverMs: firstMs,
    },
    null,
    2,
  ),
);
