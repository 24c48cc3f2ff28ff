import {
  allKnown,
  converted,
  known,
  mapOutcome,
  missing,
  type Outcome,
  propagate,
  refused,
  type Uncertain,
} from "@tapside/quantities";
import type { UnitFile } from "@tapside/records";
import {
  bestAirChargeKPaGauge,
  bucketTest,
  shutOffPressureKPaGauge,
  type TankFound,
  usableLitres,
} from "@tapside/reverse-osmosis";
import type { Context, Figure } from "./assessment.ts";
import { atmosphereOf, boosted, membranePressure, tankLitres, tankOf } from "./from-records.ts";
import { amountOf, type PhaseReadings } from "./internal/amounts.ts";
import { finite } from "./internal/finite.ts";
import { shutOffRatioOf, shutOffRatioU } from "./shut-off-ratio.ts";

/** Stated tank volumes are commonly good to 2 % (common practice, no source). */
export const TANK_VOLUME_RELATIVE = 0.02;

/** The bucket test of this phase: feed shut, litres drawn, tank gauge before and after. */
export function tankFound(readings: PhaseReadings, file: UnitFile): Outcome<TankFound> {
  const inputs = allKnown({
    fullKPaGauge: amountOf("tankFullPressure", readings, file),
    afterKPaGauge: amountOf("tankAfterPressure", readings, file),
    drawnL: amountOf("drawnVolume", readings, file),
  });
  if (file.unit.ventedTank) return refused("vented-tank");
  return mapOutcome(tankLitres(file), (value) =>
    mapOutcome(inputs, (given) =>
      bucketTest({
        ...given,
        tankVolumeL: { value, u: TANK_VOLUME_RELATIVE * value },
        atmosphericKPa: atmosphereOf(file),
      }),
    ),
  );
}

/** Air charge, kPa gauge: measured on the empty tank, else from the bucket test. */
export function airChargeKPa(readings: PhaseReadings, file: UnitFile): Outcome<Uncertain> {
  if (file.unit.ventedTank) return refused("vented-tank");
  const measured = amountOf("airCharge", readings, file);
  if (measured.kind === "known") return measured;
  return finite(mapOutcome(tankFound(readings, file), (found) => known(found.airChargeKPaGauge)));
}

/** Lowest pressure any appliance on the unit works at: the highest of their stated minima. */
export function applianceMinimumKPa(file: UnitFile): Outcome<number> {
  const stated = file.appliances
    .map((one) => one.minimumPressureKPaGauge)
    .filter((one) => one !== undefined && one > 0);
  return stated.length > 0 ? known(Math.max(...(stated as number[]))) : missing("appliance.minimumPressure");
}

/** Tank pressure at which the shut-off should close: its share of the standing feed pressure, else of the flowing one. */
export function shutOffKPa(readings: PhaseReadings, file: UnitFile, context: Context): Outcome<Uncertain> {
  if (file.unit.ventedTank) return refused("vented-tank");
  const standing = amountOf("staticPressure", readings, file);
  const feed: Outcome<Uncertain> =
    standing.kind === "known"
      ? known(boosted(standing.value, readings, file, drainLPerH(readings, file)))
      : membranePressure(readings, file);
  return mapOutcome(feed, ({ value, u }) => {
    const ratio = shutOffRatioOf(file, context);
    return known({
      value: shutOffPressureKPaGauge(value, ratio),
      u: Math.hypot(ratio * u, shutOffRatioU(file) * value),
    });
  });
}

/** What still runs through a booster as the tank gets full. */
function drainLPerH(readings: PhaseReadings, file: UnitFile): number {
  const drain = amountOf("drainFlow", readings, file);
  return drain.kind === "known" ? drain.value.value : (file.unit.ratedRejectLPerH ?? 0);
}

/** Full tank: its gauge when read, else where the shut-off should close. */
export function fullTankKPa(readings: PhaseReadings, file: UnitFile, context: Context): Outcome<Uncertain> {
  const read = amountOf("tankFullPressure", readings, file);
  return read.kind === "known" ? read : shutOffKPa(readings, file, context);
}

/** Best charge: the appliances' minimum less 2 psi. */
export function bestChargeKPa(file: UnitFile, full: Outcome<Uncertain>): Outcome<number> {
  if (file.unit.ventedTank) return refused("vented-tank");
  const minimum = applianceMinimumKPa(file);
  if (minimum.kind !== "known") return minimum;
  if (full.kind !== "known") return known(Math.max(0, minimum.value - 2 * converted(1, "psi", "kPa")));
  return bestAirChargeKPaGauge({ minimumKPaGauge: minimum.value, fullKPaGauge: full.value.value });
}

/** Litres the tank gives above the appliances' minimum pressure at a charge. */
export function usableAt(
  charge: Outcome<Uncertain>,
  full: Outcome<Uncertain>,
  file: UnitFile,
): Outcome<Figure> {
  const needs = allKnown({ charge, full, minimum: applianceMinimumKPa(file), tank: tankOf(file, 0) });
  return mapOutcome(needs, ({ charge: air, full: top, minimum, tank }) => {
    const litres = ([airChargeKPaGauge, fullKPaGauge]: readonly number[]) =>
      usableLitres(
        { ...tank, airChargeKPaGauge: Math.max(0, airChargeKPaGauge!) },
        { fullKPaGauge: fullKPaGauge!, minimumKPaGauge: minimum },
        atmosphereOf(file),
      );
    return finite(known({ ...propagate(litres, [air, top]), unit: "L" }));
  });
}
