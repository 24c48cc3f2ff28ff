/**
 * Speed of the water chemistry on `reference/water-cases/timing_2000_inputs.csv`, beside a calibration loop of the same
 * run. Targets: 50 000 speciations with all indices and 15 000 with CCPP per second and core. Prints JSON.
 */
import { readFileSync } from "node:fs";
import { performance } from "node:perf_hooks";
import { createIndexMeter } from "@tapside/water";

const COLUMNS = [
  "T_C",
  "pH",
  "Alk_CaCO3_mg",
  "Ca_mg",
  "Mg_mg",
  "Na_mg",
  "K_mg",
  "Cl_mg",
  "SO4_mg",
  "NO3_mg",
  "F_mg",
  "SiO2_mg",
];
const [head, ...lines] = readFileSync("reference/water-cases/timing_2000_inputs.csv", "utf8")
  .trim()
  .split("\n");
const places = COLUMNS.map((column) => head!.trim().split(",").indexOf(column));
const waters = lines.map((line) => {
  const cells = line.split(",");
  return Float64Array.from(places, (place) => Number(cells[place]));
});

const meter = createIndexMeter();
let unanswered = 0;

/** Runs per second over all waters: CPU time, median of seven passes after two to warm up. */
function perSecond(work: () => string): number {
  const rates: number[] = [];
  for (let pass = 0; pass < 9; pass++) {
    const start = process.cpuUsage();
    unanswered = 0;
    for (const water of waters) {
      meter.input.set(water);
      if (work() !== "") unanswered++;
    }
    const { user, system } = process.cpuUsage(start);
    if (pass > 1) rates.push((waters.length * 1e6) / (user + system));
  }
  return Math.round(rates.sort((a, b) => a - b)[3]!);
}

/** Exponentials per second: what this machine can do today. */
function calibration(): number {
  const start = performance.now();
  let sum = 0;
  for (let i = 0; i < 5e6; i++) sum += Math.exp(-i * 1e-7);
  const seconds = (performance.now() - start) / 1000;
  return Math.round((sum > 0 ? 5e6 : 0) / seconds);
}

const speciations = perSecond(meter.indices);
const withPotential = perSecond(meter.indicesAndPotential);
console.log(
  JSON.stringify({
    bench: "water",
    speciationsPerSecond: speciations,
    targetSpeciationsPerSecond: 50_000,
    withPotentialPerSecond: withPotential,
    targetWithPotentialPerSecond: 15_000,
    unanswered,
    calibrationExpPerSecond: calibration(),
  }),
);
