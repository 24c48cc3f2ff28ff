import type { Outcome } from "@tapside/quantities";
import { tubesLossKPa } from "./internal/tubes-loss.ts";
import { type Restrictor, restrictorLPerH } from "./restrictor.ts";
import type { Tube } from "./tube-drop.ts";

/** What passed to the drain, and where. */
export interface DrainRead {
  readonly drainLPerH: number;
  readonly pressureKPaGauge: number;
  readonly temperatureC: number;
  readonly drainTubes?: readonly Tube[] | undefined;
}

/** Something is left for the restrictor, whatever the line behind it is said to take. */
const LEAST_SHARE = 0.01;

/**
 * The restrictor as a reading shows it: the law of what was found, scaled to the flow that was read. Where nothing is known of its kind, or
 * only its rating, the reading is its rating.
 *
 * Formula: scale = read flow / flow by its law at the read pressure, less what the drain line takes
 * Source: the laws of `restrictorLPerH`.
 * Error: that of the reading; away from its temperature that of the law.
 * @example
 * ```ts
 * import { known } from "@tapside/quantities";
 * import { restrictorAsRead, restrictorLPerH } from "@tapside/reverse-osmosis";
 * const capillary = known({ kind: "capillary", boreMm: 0.3, lengthM: 0.5 });
 * const read = restrictorAsRead(capillary, { drainLPerH: 0.6, pressureKPaGauge: 400, temperatureC: 25 });
 * restrictorLPerH(read, 400, 10); // => 0.4089
 * ```
 */
export function restrictorAsRead(found: Outcome<Restrictor>, read: DrainRead): Restrictor {
  const { drainLPerH, pressureKPaGauge, temperatureC, drainTubes = [] } = read;
  const line = drainTubes.length > 0 ? tubesLossKPa(drainTubes, drainLPerH, temperatureC) : 0;
  const dropKPa = Math.max(LEAST_SHARE * pressureKPaGauge, pressureKPaGauge - line);
  const rating: Restrictor = { kind: "rated", ratedLPerH: drainLPerH, ratedKPa: dropKPa };
  if (found.kind !== "known" || found.value.kind === "rated") return rating;
  const { scale: _, ...restrictor } = found.value;
  const passed = restrictorLPerH(restrictor, dropKPa, temperatureC);
  return passed > 0 ? { ...restrictor, scale: drainLPerH / passed } : rating;
}
