import { CONSTITUENTS } from "../analysis.ts";
import type { FieldReadings, ReadingUncertainty } from "../complete.ts";
import { type CoordinateId, coordinate, leastOf } from "./coordinates.ts";
import {
  chargeBalance,
  conductivitySeen,
  hardnessSeen,
  type Observation,
  seen,
  tdsSeen,
} from "./observations.ts";

/** Standard uncertainty of ln of what is only known to be little. */
const LITTLE = 0.3;

/** Readings that several constituents make up together; a figure below `least` says only "little". */
const SUMS = [
  { name: "hardnessMgPerLCaCO3", least: 0.05, sd: "hardness", see: hardnessSeen },
  { name: "ec25UsPerCm", least: 0.1, sd: "conductivity", see: conductivitySeen },
  { name: "tdsMgPerL", least: 0.1, sd: "tds", see: tdsSeen },
] as const;

/** What was read, and that a water carries no charge, as observations of a place in the prior. */
export function fieldObservations(readings: FieldReadings, u: ReadingUncertainty): readonly Observation[] {
  const wide = (name: string, sd: number) => Math.hypot(sd, readings.spread?.[name] ?? 0);
  const out: Observation[] = [chargeBalance(u.chargeBalance)];
  for (const { name, least, sd, see } of SUMS) {
    const value = readings[name];
    if (value === undefined) continue;
    out.push(value < least ? see(least, LITTLE) : see(value, wide(name, u[sd])));
  }
  const put = (id: CoordinateId, value: number | undefined, sd: number) => {
    const at = coordinate(id, value);
    if (at !== undefined) out.push(seen(id, at, value! < leastOf(id) ? LITTLE : sd));
  };
  put("temperatureC", readings.temperatureC, wide("temperatureC", u.temperatureC));
  put("pH", readings.pH, wide("pH", u.pH));
  put("Alk", readings.alkalinityMgPerLCaCO3, wide("alkalinityMgPerLCaCO3", u.alkalinity));
  for (const id of CONSTITUENTS) put(id, readings.ions?.[id], wide(id, u.ion));
  return out;
}
