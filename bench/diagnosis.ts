/**
 * Speed of the diagnosis beside a calibration loop of the same run: one answer, one step (odds and next test), one check of fit. Prints
 * JSON. Run: `npm run bench -- diagnosis`.
 */
import { performance } from "node:perf_hooks";
import {
  advise,
  checkFit,
  donorBank,
  loadEngine,
  posterior,
  type Readings,
  seededRandom,
  simulateCase,
} from "@tapside/diagnosis";

function millisecondsOf(
  task: () => unknown,
  times: number,
): { readonly median: number; readonly worst: number } {
  task();
  const laps = Array.from({ length: times }, () => {
    const start = performance.now();
    task();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return { median: laps[Math.floor(times / 2)]!, worst: laps[times - 1]! };
}

/** Square roots and exponentials: what this machine can do. */
function calibration(): number {
  let sum = 0;
  for (let k = 1; k <= 100_000; k++) sum += Math.exp(-Math.sqrt(k * 1e-3));
  return sum;
}

const engine = await loadEngine();
const { scene, readings } = simulateCase(["scaledMembrane", "softenerFailed"], seededRandom(5));
const bank = donorBank(scene);
const early: Readings = {
  temperature: readings.temperature,
  feedTds: readings.feedTds,
  beforeFilterPressure: readings.beforeFilterPressure,
  permeateTds: readings.permeateTds,
};
const result = posterior(engine, bank.expected, readings);

console.log(
  JSON.stringify(
    {
      calibrationMs: millisecondsOf(calibration, 20),
      answerMs: millisecondsOf(() => posterior(engine, bank.expected, early), 200),
      stepMs: millisecondsOf(() => advise(engine, bank, early), 20),
      firstStepMs: millisecondsOf(() => advise(engine, donorBank(scene), early), 10),
      checkFitMs: millisecondsOf(() => checkFit(scene, result, readings), 3),
    },
    (_, value) => (typeof value === "number" ? Number(value.toPrecision(3)) : value),
    1,
  ),
);
