/** A kitchen's day beside a calibration loop of the same run: one remedy, all of them, the smallest tank. Prints JSON. */
import { evenlyBetween, type Kitchen, leastTankL, remedies, remedy } from "@tapside/kitchen";
import { simpleUnit } from "@tapside/reverse-osmosis";

const hours = evenlyBetween(6, 14);
if (hours.kind !== "known") throw new Error(hours.kind);

const kitchen: Kitchen = {
  unit: simpleUnit(
    { areaM2: 1.5, waterLPerM2HBar: 3.2, saltLPerM2H: 0.65, polarisation: 1.1 },
    { ratedLPerH: 45, ratedKPa: 414 },
    { volumeL: 53, airChargeKPaGauge: 40 },
  ),
  situation: {
    conditions: { feedPressureKPaGauge: 414, temperatureC: 12, feedMgPerL: 300 },
    minimumKPaGauge: 138,
  },
  uses: [{ name: "oven", litresPerDay: { value: 45, u: 9 }, hours: hours.value }],
};

/** Processor time, ms: the middle of several turns. */
function middleMs(task: () => unknown, turns = 9): number {
  const spent = Array.from({ length: turns }, () => {
    const start = process.cpuUsage();
    task();
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  });
  return Math.round(10 * spent.sort((a, b) => a - b)[Math.floor(turns / 2)]!) / 10;
}

/** A million square roots and exponentials: what this machine can do. */
function calibration(): number {
  let sum = 0;
  for (let k = 1; k <= 1_000_000; k++) sum += Math.exp(-Math.sqrt(k * 1e-6));
  return sum;
}

console.log(
  JSON.stringify(
    {
      bench: "kitchen",
      calibrationMs: middleMs(calibration),
      oneRemedyMs: middleMs(() => remedy("asItIs", kitchen)),
      allRemediesMs: middleMs(() => remedies(kitchen)),
      smallestTankMs: middleMs(() => leastTankL(kitchen), 5),
    },
    undefined,
    2,
  ),
);
