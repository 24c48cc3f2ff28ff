/** Time to print a service record of five pages and to freeze it, beside a calibration loop of the same run. Prints JSON. */
import { performance } from "node:perf_hooks";
import { freeze } from "@tapside/records";
import type { RecordContent } from "@tapside/report";
import { recordPdf } from "@tapside/report/pdf";
import { demoRecord, FONTS } from "@tapside/report/test-support";

const content = () => demoRecord(2);

/** The record with its last page said again until it has five. */
function fivePages(): RecordContent {
  const once = content();
  const last = once.blocks.slice(once.blocks.findIndex((block) => block.kind === "newPage"));
  return { ...once, blocks: [...once.blocks, ...last, ...last] };
}

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
const firstMs = await milliseconds(() => recordPdf(five, mark, FONTS));
const pdf = await recordPdf(five, mark, FONTS);
const pages = new TextDecoder("latin1").decode(pdf).match(/\/Type \/Page\b/g)?.length;
console.log(
  JSON.stringify(
    {
      calibrationMs: await medianOf(calibration),
      pages,
      bytes: pdf.length,
      firstPdfMs: firstMs,
      nextPdfMs: await medianOf(() => recordPdf(five, mark, FONTS)),
      buildAndFreezeMs: await medianOf(() => freeze(content())),
    },
    null,
    2,
  ),
);
