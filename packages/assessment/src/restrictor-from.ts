import type { UnitFile } from "@tapside/records";
import {
  capillaryFlow,
  linesAsFound,
  type Restrictor,
  restrictorAsFound,
  restrictorAsRead,
  type StandardReadings,
  usualRating,
  usualScatter,
} from "@tapside/reverse-osmosis";
import { drainsOf, elementsOf, isLabel } from "./from-records.ts";

/**
 * The restrictor: as found at a label's readings, else by its kind as it passed at the reference readings; of a label's drain, what the
 * elements together let by.
 */
export function restrictorFrom(set: StandardReadings, file: UnitFile): Restrictor {
  const found = restrictorAsFound(file.unit);
  const drain = set.drainLPerH!;
  if (isLabel(set)) {
    if (found.kind === "known") return found.value;
    const ratedLPerH = (drain.value * drainsOf(file.unit)) / elementsOf(file.unit);
    return { kind: "rated", ratedLPerH, ratedKPa: set.membranePressureKPaGauge!.value };
  }
  return restrictorAsRead(found, {
    drainLPerH: drain.value,
    pressureKPaGauge: set.membranePressureKPaGauge!.value,
    temperatureC: set.temperatureC!.value,
    drainTubes: linesAsFound(file.unit).drainTubes,
  });
}

/**
 * How far a restrictor of each kind is off what it was found to be, one standard deviation: a capillary by its bore (4 % a 1 % of bore), a
 * hole by its bore and its edge, a measurement by cup and watch. Common practice, no source.
 */
export const RESTRICTOR_RELATIVE: Readonly<Record<Restrictor["kind"], number>> = {
  rated: usualScatter.restrictorRelative,
  capillary: 0.1,
  orifice: 0.06,
  measured: 0.03,
};

/** Beyond its laminar range a capillary's flow is told to ± 20 %, two standard deviations. */
export const BEYOND_LAMINAR_RELATIVE = 0.1;

/** A capillary so wide or short that tap pressure drives it beyond its laminar range; at the label's pressure where there is one. */
export function isBeyondLaminar({ unit }: Pick<UnitFile, "unit">): boolean {
  const found = restrictorAsFound(unit);
  if (found.kind !== "known" || found.value.kind !== "capillary") return false;
  const kPa = unit.testPressureKPaGauge! > 0 ? unit.testPressureKPaGauge! : usualRating.kPa;
  return capillaryFlow(found.value, kPa, usualRating.temperatureC).regime === "beyond-laminar";
}

/** What is not known of a restrictor that no reading shows. */
export function restrictorRelativeOf(file: Pick<UnitFile, "unit">): number {
  const found = restrictorAsFound(file.unit);
  const relative = RESTRICTOR_RELATIVE[found.kind === "known" ? found.value.kind : "rated"];
  return isBeyondLaminar(file) ? Math.hypot(relative, BEYOND_LAMINAR_RELATIVE) : relative;
}
