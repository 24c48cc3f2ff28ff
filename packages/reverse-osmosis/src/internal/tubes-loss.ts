import { type Tube, tubeDrop } from "../tube-drop.ts";

const leastLPerH = 1e-12;

/**
 * Pressure lost in tubes one after the other, kPa, as one number that rises with flow without a step: between laminar and
 * turbulent it moves from the lower to the upper bound with the Reynolds number.
 */
export function tubesLossKPa(tubes: readonly Tube[], flowLPerH: number, temperatureC: number): number {
  if (!(flowLPerH > leastLPerH)) return 0;
  let sum = 0;
  for (const tube of tubes) {
    const { lowKPa, highKPa, reynolds, regime } = tubeDrop(tube, flowLPerH, temperatureC);
    const share = regime === "transition" ? (reynolds - 2000) / 2000 : 0;
    sum += lowKPa + share * (highKPa - lowKPa);
  }
  return sum;
}
