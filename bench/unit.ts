/**
 * Speed of the unit model beside a calibration loop of the same run, and the quadrature error of a filling. Prints JSON.
 * Run: `npx vite-node bench/unit.ts`, or any runner of TypeScript.
 */
import { performance } from "node:perf_hooks";
import {
  type Conditions,
  expectedReadings,
  filling,
  nightRunning,
  operatingPoint,
  simpleUnit,
  willItHelp,
} from "@tapside/reverse-osmosis";

function rate(task: (i: number) => unknown, seconds = 1.5): number {
  for (let i = 0; i < 200; i++) task(i);
  const start = performance.now();
  let n = 0;
  while (performance.now() - start < seconds * 1000) for (let k = 0; k < 20; k++) task(n++);
  return n / ((performance.now() - start) / 1000);
}

/** Processor seconds, not the clock's: other work on the machine then counts little. */
function perSecond(task: (i: number) => unknown, times: number): number {
  const start = process.cpuUsage();
  for (let i = 0; i < times; i++) task(i);
  const { user, system } = process.cpuUsage(start);
  return (times * 1e6) / (user + system);
}

/** Turn and turn about with the calibration loop; the middle of many short rounds. */
function besideCalibration(task: (i: number) => unknown, rounds = 31) {
  const seen = Array.from({ length: rounds }, () => {
    const loops = perSecond(calibration, 2000);
    const tasks = perSecond(task, 1500);
    return { loops, tasks, ratio: tasks / loops };
  });
  const middle = (key: "loops" | "tasks" | "ratio") =>
    seen.map((one) => one[key]).sort((a, b) => a - b)[Math.floor(rounds / 2)]!;
  return { loops: middle("loops"), tasks: middle("tasks"), ratio: middle("ratio") };
}

const spread = (i: number, steps: number) => (i % steps) / steps;

/** Square roots and exponentials as the osmotic pressure needs them: what this machine can do. */
function calibration(i: number): number {
  let sum = 0;
  for (let k = 1; k <= 1000; k++) sum += Math.exp(-Math.sqrt(k * 1e-3 + i * 1e-9));
  return sum;
}

const unit = simpleUnit(
  { areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65, polarisation: 1.1 },
  { ratedLPerH: 45, ratedKPa: 414 },
  { volumeL: 53, airChargeKPaGauge: 60 },
);
const conditions = (i: number): Conditions => ({
  feedPressureKPaGauge: 250 + 300 * spread(i, 97),
  temperatureC: 5 + 25 * spread(i, 89),
  feedMgPerL: 100 + 1500 * spread(i, 83),
  tankPressureKPaGauge: 120 * spread(i, 79),
});

function worstFillingError(): number {
  let worst = 0;
  for (let i = 0; i < 60; i++) {
    const { tankPressureKPaGauge: _, ...at } = conditions(i * 7);
    const coarse = filling(unit, at);
    const fine = filling(unit, at, { panels: 12 });
    if (coarse.kind !== "known" || fine.kind !== "known") continue;
    worst = Math.max(worst, Math.abs(coarse.value.hours / fine.value.hours - 1));
  }
  return worst;
}

const today = {
  feedPressureKPaGauge: { value: 414, u: 5 },
  temperatureC: { value: 12, u: 0.3 },
  feedMgPerL: { value: 250, u: 4 },
};
const help = { today, minimumKPaGauge: 138 };
const { tankPressureKPaGauge: _, ...feed } = conditions(50);
const expectedReadingsMs = 1000 / rate(() => expectedReadings(unit, today));
const points = besideCalibration((i) => operatingPoint(unit, conditions(i), { segments: 20 }));
console.log(
  JSON.stringify(
    {
      calibrationLoopsPerSecond: Math.round(points.loops),
      operatingPointsPerSecond: Math.round(points.tasks),
      operatingPointsPerCalibrationLoop: points.ratio,
      fillingsPerSecond: Math.round(rate(() => filling(unit, feed))),
      fillingQuadratureErrorPercent: worstFillingError() * 100,
      expectedReadingsMs,
      /** What a phone six times slower would need; "what should it read today" is promised within 100. */
      expectedReadingsMsAtSixTimes: 6 * expectedReadingsMs,
      tryAChangeMs: 1000 / rate(() => filling(unit, feed, { panels: 2, segments: 10 })),
      willItHelpMs:
        1000 / rate(() => willItHelp(unit, { ...unit, tanks: [...unit.tanks, ...unit.tanks] }, help)),
      nightRunningMs: 1000 / rate(() => nightRunning({ ...unit, backLeakLPerHBar: 5 }, feed)),
    },
    null,
    2,
  ),
);
