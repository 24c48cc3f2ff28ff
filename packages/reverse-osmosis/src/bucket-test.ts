import { known, type Outcome, refused, type Uncertain } from "@tapside/quantities";
import { propagate } from "./internal/propagate.ts";

/** Feed shut, a measured draw from the full tank, pressure before and after a rest. */
export interface BucketTest {
  readonly tankVolumeL: Uncertain;
  readonly fullKPaGauge: Uncertain;
  readonly afterKPaGauge: Uncertain;
  readonly drawnL: Uncertain;
  readonly atmosphericKPa: number;
}

export interface TankFound {
  readonly gasAtFullL: Uncertain;
  readonly waterAtFullL: Uncertain;
  /** Air charge with the tank empty, if all gas is behind the bladder. */
  readonly airChargeKPaGauge: Uncertain;
  /** Less gas than a tank with no charge at all could hold: water has reached the air side. */
  readonly waterlogged: boolean;
}

type Values = Readonly<Record<"tankVolumeL" | "fullKPaGauge" | "afterKPaGauge" | "drawnL", number>>;

/**
 * Air charge and gas volume of a tank from a measured draw, without emptying it.
 *
 * Formula: gas at full = P₂ΔV/(P₁ − P₂), charge = P₁·gas/V − Pa, absolute pressures
 * Source: Boyle's law.
 * Range: pressures read after a rest of 10 to 15 min (from memory), a fall of 50 kPa and more.
 * Error: carried from the readings; gauge steps of 1 psi give about ±1.5 psi of charge. A fast draw without rest reads low.
 * @example
 * ```ts
 * import { bucketTest } from "@tapside/reverse-osmosis";
 * const found = bucketTest({
 *   tankVolumeL: { value: 53, u: 0.5 }, fullKPaGauge: { value: 289.6, u: 3.4 }, afterKPaGauge: { value: 165.5, u: 3.4 }, drawnL: { value: 8, u: 0.1 },
 *   atmosphericKPa: 101.325,
 * });
 * found.kind === "known" ? found.value.airChargeKPaGauge.value : 0; // => 25.5
 * ```
 */
export function bucketTest(test: BucketTest): Outcome<TankFound> {
  const { tankVolumeL, fullKPaGauge, afterKPaGauge, drawnL, atmosphericKPa } = test;
  if (!(drawnL.value > 0 && tankVolumeL.value > 0)) return refused("nothing-drawn");
  if (!(fullKPaGauge.value > afterKPaGauge.value)) return refused("pressure-did-not-fall");
  if (!(afterKPaGauge.value > 0)) return refused("tank-emptied");
  const inputs = { tankVolumeL, fullKPaGauge, afterKPaGauge, drawnL };
  const gas = (x: Values) =>
    ((x.afterKPaGauge + atmosphericKPa) * x.drawnL) / (x.fullKPaGauge - x.afterKPaGauge);
  const charge = (x: Values) => ((x.fullKPaGauge + atmosphericKPa) * gas(x)) / x.tankVolumeL - atmosphericKPa;
  const gasAtFullL = propagate(gas, inputs);
  if (gasAtFullL.value > tankVolumeL.value) return refused("more-gas-than-tank", { gasL: gasAtFullL.value });
  const airChargeKPaGauge = propagate(charge, inputs);
  return known({
    gasAtFullL,
    waterAtFullL: propagate((x) => x.tankVolumeL - gas(x), inputs),
    airChargeKPaGauge,
    waterlogged: airChargeKPaGauge.value + 2 * airChargeKPaGauge.u < 0,
  });
}
