/**
 * What the 90 % intervals of `tapside water complete` cover when a source is left out of the prior: by source and by
 * readings taken, beside median widths (mg/L; SI itself), interval scores and the 99 % binomial band. Slow; prints a table.
 */

import { realWaters } from "@tapside/water";
import { leaveOut, READINGS, TARGETS } from "../packages/water/src/internal/left-out.ts";

const LADDER = [[], ...READINGS.map((_, i) => READINGS.slice(0, i + 1))];
const WITHOUT = READINGS.slice(0, -1).map((missing) => READINGS.filter((one) => one !== missing));
/** What is judged beside the ladder: all that is read before the first bottle is filled. */
const METERS_AND_HARDNESS = READINGS.filter((one) =>
  ["conductivity", "pH", "temperature", "hardness"].includes(one),
);
const EVERY = Number(process.env.EVERY ?? 1);
const nameOf = (given: readonly string[]) =>
  given.length === 0
    ? "no reading"
    : given.length === READINGS.length
      ? "all"
      : given === METERS_AND_HARDNESS
        ? "meters, hardness"
        : given.every((one, i) => one === READINGS[i])
          ? `to ${given[given.length - 1]}`
          : `all but ${READINGS.find((one) => !given.includes(one))}`;

for (const source of ["USGS-INL", "Kwale-Kenya", "Semarang-Indonesia"]) {
  const rows = realWaters().filter((water) => water.source === source).length;
  const every = rows > 100 ? EVERY : 1;
  const half = 2.576 * Math.sqrt(0.09 / Math.ceil(rows / every));
  console.log(
    `${source}: ${rows} rows, band ${(0.9 - half).toFixed(3)} to ${Math.min(1, 0.9 + half).toFixed(3)}`,
  );
  for (const given of [...LADDER, METERS_AND_HARDNESS, ...WITHOUT]) {
    const judged = leaveOut(source, given, { every });
    const cells = TARGETS.map((target) => {
      const { covered, width, score } = judged[target];
      const told = target === "Cl" && given.includes("chloride");
      const flag = told ? " " : covered < 0.9 - half ? "<" : covered > 0.9 + half ? ">" : " ";
      return `${target} ${told ? "given" : covered.toFixed(3)}${flag} ${width.toPrecision(3)} ${score.toFixed(2)}`.padEnd(
        25,
      );
    });
    console.log(`  ${nameOf(given).padEnd(20)}${cells.join("")}`);
  }
}
