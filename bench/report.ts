/** Time to print a service record of five pages and to freeze it, beside a calibration loop of the same run. Prints JSON. */
import { readFileSync } from "node:fs";
import { performance } from "node:perf_hooks";
import { assess } from "@tapside/assessment";
import { bookOf, EMPTY_STATE, fold, freeze, importFile, unitFile } from "@tapside/records";
import { buildRecord, type RecordContent } from "@tapside/report";
import { recordPdf } from "@tapside/report/pdf";
import { en } from "@tapside/words";

const root = process.cwd();
const book = importFile(readFileSync(`${root}/examples/larkmoor.tapside.json`, "utf8"));
if (book.kind !== "known") throw new Error("the demo district does not import");
const file = unitFile(bookOf(fold(EMPTY_STATE, book.value.changes)), "demo:2:unit")!;
const visit = file.visits.at(-1)!;
const asOf = visit.endedAt!;
const context = { asOf, timeZone: "UTC", settings: {} };

function content(): RecordContent {
  const assessment = assess(file, visit.id, context);
  const words = en;
  return buildRecord({
    file,
    visitId: visit.id,
    assessment,
    words,
    issuedAt: asOf,
    timeZone: "UTC",
    revision: 1,
  });
}

/** The record with its last page said again until it has five. */
function fivePages(): RecordContent {
  const once = content();
  const last = once.blocks.slice(once.blocks.findIndex((block) => block.kind === "newPage"));
  return { ...once, blocks: [...once.blocks, ...last, ...last] };
}

const font = (name: string) => new Uint8Array(readFileSync(`${root}/packages/pictures/fonts/${name}`));
const fonts = { regular: font("B612-Regular.otf"), bold: font("B612-Bold.otf") };

async function milliseconds(task: () => unknown): Promise<number> {
  const start = performance.now();
  await task();
  return performance.now() - start;
}

const median = (times: readonly number[]) => [...times].sort((a, b) => a - b)[times.length >> 1]!;

async function medianOf(task: () => unknown, runs = 9): Promise<number> {
  const times: number[] = [];
  for (let i = 0; i < runs; i++) times.push(await milliseconds(task));
  return median(times);
}

/** A million square roots and exponentials: what this machine can do. */
function calibration() {
  let sum = 0;
  for (let k = 1; k <= 1_000_000; k++) sum += Math.exp(-Math.sqrt(k * 1e-6));
  return sum;
}

const five = fivePages();
const { mark } = freeze(five);
const firstMs = await milliseconds(() => recordPdf(five, mark, fonts));
const pdf = await recordPdf(five, mark, fonts);
const pages = new TextDecoder("latin1").decode(pdf).match(/\/Type \/Page\b/g)?.length;
console.log(
  JSON.stringify(
    {
      calibrationMs: await medianOf(calibration),
      pages,
      bytes: pdf.length,
      firstPdfMs: firstMs,
      nextPdfMs: await medianOf(() => recordPdf(five, mark, fonts)),
      buildAndFreezeMs: await medianOf(() => freeze(content())),
    },
    null,
    2,
  ),
);
