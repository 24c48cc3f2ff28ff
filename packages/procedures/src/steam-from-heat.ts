import { known, type Outcome, refused } from "@tapside/quantities";

const STEAM_KJ_PER_KG = 2675.57;
const WATER_KJ_PER_KG_K = 4.2;

/**
 * The most a steam generator can evaporate, kg/h (litres an hour of treated water). What a steamer draws beyond it is quench,
 * bleed, filling or wash water.
 *
 * `kg/h = 3600 kW ÷ (2675.57 − 4.2 T)`
 *
 * Source: enthalpy of saturated steam at 101.325 kPa by IAPWS-IF97; water by 4.2 kJ/(kg K).
 * Range: feed 0 to 95 °C, steam at 100 °C.
 * Error: below 0.1 % from the specific heat; heat lost to the room makes it less, never more.
 *
 * @example
 * ```ts
 * import { steamAtMostKgPerH } from "@tapside/procedures";
 * steamAtMostKgPerH(9, 15); // => { kind: "known", value: 12.4 }
 * ```
 */
export function steamAtMostKgPerH(heaterKW: number, feedC: number): Outcome<number> {
  if (!(Number.isFinite(heaterKW) && heaterKW > 0)) return refused("heater-needs-power");
  if (!(feedC >= 0 && feedC <= 95))
    return refused("out-of-range", { value: feedC, unit: "°C", low: 0, high: 95 });
  return known((3600 * heaterKW) / (STEAM_KJ_PER_KG - WATER_KJ_PER_KG_K * feedC));
}
