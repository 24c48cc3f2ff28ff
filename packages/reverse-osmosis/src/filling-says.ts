import { known, mapOutcome, type Outcome, refused, type Uncertain } from "@tapside/quantities";
import { type FillingOptions, filling } from "./filling.ts";
import { bracketedRoot } from "./internal/bracketed-root.ts";
import type { Conditions, Unit } from "./unit.ts";

export interface FillingSays {
  /** If the tank is as told: water permeability over the one of the unit given. */
  readonly waterRatio: Outcome<Uncertain>;
  /** If the element is as told: room for water over the one of the tanks given. */
  readonly tankRatio: Outcome<Uncertain>;
}

const widest = 20;

/**
 * What a measured filling time says, each time with the rest of the unit taken as right: one time cannot tell element and tank apart.
 *
 * Formula: the factor of A at which `filling` takes the measured hours, in the logarithm; the hours go with the tank's volume, so its factor is their
 * ratio
 * Source: `filling`.
 * Range: factors of 1/20 to 20. `fromKPaGauge` for a swing between two tank pressures instead of a filling from empty.
 * Error: u of the time carried; of the unit's own parts nothing.
 * @example
 * ```ts
 * import { fillingSays, simpleUnit } from "@tapside/reverse-osmosis";
 * const element = { areaM2: 1.51, waterLPerM2HBar: 2.4, saltLPerM2H: 0.261, polarisation: 1.2 };
 * const unit = { ...simpleUnit(element, { ratedLPerH: 32.1, ratedKPa: 414 }, { volumeL: 53, airChargeKPaGauge: 56 }), shutOff: { ratio: 0.63 } };
 * const at = { feedPressureKPaGauge: 308, temperatureC: 31.9, feedMgPerL: 525 };
 * const says = fillingSays(unit, at, { value: 8.273, u: 0.1 });
 * says.tankRatio.kind === "known" ? says.tankRatio.value.value : 0; // => 2
 * ```
 */
export function fillingSays(
  unit: Unit,
  conditions: Omit<Conditions, "tankPressureKPaGauge">,
  measuredHours: Uncertain,
  options: FillingOptions = {},
): FillingSays {
  const hours = (factor: number): Outcome<number> =>
    mapOutcome(filling(withWater(unit, factor), conditions, options), (filled) => known(filled.hours));
  const told = hours(1);
  if (!(measuredHours.value > 0)) {
    const no = refused("not-positive", { name: "hours", value: measuredHours.value });
    return { waterRatio: no, tankRatio: no };
  }
  return {
    waterRatio: mapOutcome(told, () => waterRatio(hours, measuredHours)),
    tankRatio: mapOutcome(told, (value) =>
      known({ value: measuredHours.value / value, u: measuredHours.u / value }),
    ),
  };
}

const withWater = (unit: Unit, factor: number): Unit => ({
  ...unit,
  elements: unit.elements.map((one) => ({ ...one, waterLPerM2HBar: one.waterLPerM2HBar * factor })),
});

function waterRatio(hours: (factor: number) => Outcome<number>, measured: Uncertain): Outcome<Uncertain> {
  const at = (logFactor: number) => {
    const one = hours(Math.exp(logFactor));
    return one.kind === "known" ? Math.log(one.value) : 20;
  };
  const end = Math.log(widest);
  const root = bracketedRoot((x) => at(x) - Math.log(measured.value), -end, end, { x: 1e-9, f: 1e-8 });
  if (root.kind === "no-sign-change") return refused("filling-time-out-of-range", { hours: measured.value });
  const slope = (at(root.x + 0.01) - at(root.x - 0.01)) / 0.02;
  const value = Math.exp(root.x);
  return known({ value, u: Math.abs((value * measured.u) / (measured.value * slope)) });
}
