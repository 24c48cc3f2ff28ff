/** A tank filling through a constant permeability: no change of osmotic pressure along the way. */
export interface ConstantFill {
  readonly tankVolumeL: number;
  readonly airChargeKPaGauge: number;
  readonly fullKPaGauge: number;
  /** Feed pressure less osmotic difference. */
  readonly effectiveFeedKPaGauge: number;
  readonly permeabilityLPerHKPa: number;
  readonly atmosphericKPa: number;
}

/**
 * Hours to fill a tank through a constant permeability, closed form: the check on the quadrature, and good enough by hand.
 *
 * Formula: (V·P₀/k)[ln(P/(F − P))/F² − 1/(F·P)] from P₀ to P₁, absolute pressures
 * Source: integral of Boyle's law with flow k(F − P).
 * Range: full pressure below the effective feed pressure.
 * Error: none in the form; real permeability falls a little as salt passes.
 * @example
 * ```ts
 * import { constantFillHours } from "@tapside/reverse-osmosis";
 * const psi = 6.894757;
 * constantFillHours({
 *   tankVolumeL: 14 * 3.785412, airChargeKPaGauge: 7 * psi, fullKPaGauge: 40 * psi, effectiveFeedKPaGauge: 55 * psi,
 *   permeabilityLPerHKPa: (2 * 3.785412) / 24 / psi, atmosphericKPa: 14.7 * psi,
 * }); // => 3.02
 * ```
 */
export function constantFillHours(fill: ConstantFill): number {
  const start = fill.airChargeKPaGauge + fill.atmosphericKPa;
  const end = fill.fullKPaGauge + fill.atmosphericKPa;
  const feed = fill.effectiveFeedKPaGauge + fill.atmosphericKPa;
  const primitive = (p: number) => Math.log(p / (feed - p)) / feed ** 2 - 1 / (feed * p);
  return ((fill.tankVolumeL * start) / fill.permeabilityLPerHKPa) * (primitive(end) - primitive(start));
}
