import { known, type Outcome, refused } from "@tapside/quantities";

/** A pressurised storage tank. */
export interface Tank {
  readonly volumeL: number;
  /** Air charge with the water side empty and open. */
  readonly airChargeKPaGauge: number;
  /** The bladder's own limit on stored water, when stated. */
  readonly maximumWaterL?: number;
  /** The diaphragm has let water into the air side. */
  readonly waterAtAirValve?: boolean;
}

/**
 * Water in a tank at rest at a pressure, L.
 *
 * Formula: V[1 − (P₀ + Pa)/(P + Pa)], not above the bladder's limit
 * Source: Boyle's law in absolute pressures; drawdown form in The Driller, article 84709.
 * Range: slow filling, so that the gas keeps room temperature.
 * Error: that of the charge and pressure readings. Gauge pressures instead of absolute would give 0.825 for 0.603.
 * @example
 * ```ts
 * import { storedLitres } from "@tapside/reverse-osmosis";
 * storedLitres({ volumeL: 53, airChargeKPaGauge: 48.26 }, 275.8, 101.325); // => 31.98
 * ```
 */
export function storedLitres(tank: Tank, pressureKPaGauge: number, atmosphericKPa: number): number {
  if (!(pressureKPaGauge > tank.airChargeKPaGauge)) return 0;
  const fraction = 1 - (tank.airChargeKPaGauge + atmosphericKPa) / (pressureKPaGauge + atmosphericKPa);
  return Math.min(fraction * tank.volumeL, tank.maximumWaterL ?? Number.POSITIVE_INFINITY);
}

/** Pressure of a tank holding some litres, kPa gauge: Boyle's law the other way round. Source: as `storedLitres`. */
export function tankPressureKPaGauge(tank: Tank, litres: number, atmosphericKPa: number): number {
  return (tank.airChargeKPaGauge + atmosphericKPa) / (1 - litres / tank.volumeL) - atmosphericKPa;
}

/**
 * Water a tank gives from full down to the lowest pressure the appliance accepts, L. With the charge above that pressure it
 * gives everything and then stops abruptly.
 *
 * Formula: from the slowly filled state, V₁(P₁/P₂)^(1/n) − V₁; n = 1 slow, 1.4 sudden draw
 * Source: The Driller, article 84709 (n = 1); polytropic exponents: common practice.
 * Range: n from 1 to 1.4.
 * Error: a fast draw gives up to a third less than n = 1 says.
 * @example
 * ```ts
 * import { usableLitres } from "@tapside/reverse-osmosis";
 * usableLitres({ volumeL: 53, airChargeKPaGauge: 48.26 }, { fullKPaGauge: 275.8, minimumKPaGauge: 137.9 }, 101.325); // => 12.1
 * ```
 */
export function usableLitres(
  tank: Tank,
  swing: { readonly fullKPaGauge: number; readonly minimumKPaGauge: number },
  atmosphericKPa: number,
  polytropic = 1,
): number {
  const stored = storedLitres(tank, swing.fullKPaGauge, atmosphericKPa);
  if (stored === 0 || swing.minimumKPaGauge >= swing.fullKPaGauge) return 0;
  const gasL = tank.volumeL - stored;
  const fullKPaAbsolute = tankPressureKPaGauge(tank, stored, atmosphericKPa) + atmosphericKPa;
  const gasAtMinimumL =
    gasL * (fullKPaAbsolute / (swing.minimumKPaGauge + atmosphericKPa)) ** (1 / polytropic);
  return Math.min(stored, Math.max(0, gasAtMinimumL - gasL));
}

const marginKPa = 2 * 6.894757;

/**
 * Air charge that gives most usable water above the appliance's minimum, with a little in hand, kPa gauge.
 *
 * Formula: minimum − 2 psi
 * Source: optimum at charge = minimum from Boyle's law; 2 psi below it: common practice (well-tank leaflets).
 * Range: minimum pressures of 2 psi and more below the full pressure.
 * Error: none in the optimum; the margin is a habit.
 * @example
 * ```ts
 * import { bestAirChargeKPaGauge } from "@tapside/reverse-osmosis";
 * bestAirChargeKPaGauge({ minimumKPaGauge: 137.895, fullKPaGauge: 275.8 }); // => { "kind": "known", "value": 124.1 }
 * ```
 */
export function bestAirChargeKPaGauge(swing: {
  readonly minimumKPaGauge: number;
  readonly fullKPaGauge: number;
}): Outcome<number> {
  if (swing.minimumKPaGauge >= swing.fullKPaGauge) return refused("minimum-above-full", { ...swing });
  return known(Math.max(0, swing.minimumKPaGauge - marginKPa));
}
