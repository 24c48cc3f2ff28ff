import {
  naclOsmoticPressureKPa,
  shutOffPressureKPaGauge,
  standingPressureKPaGauge,
  storedLitres,
  tankFullKPaGauge,
  type Unit,
} from "@tapside/reverse-osmosis";
import type { Hidden } from "../hidden.ts";

/** Where the tank comes to rest: at shut-off, which stands behind filters and booster, or where the element can press no further. */
export function fullTankKPaGauge(hidden: Hidden): number {
  const { unit, conditions } = hidden.situation;
  const static_ = standingPressureKPaGauge(unit, conditions, hidden.staticPressureKPaGauge);
  const osmotic = naclOsmoticPressureKPa(conditions.feedMgPerL * 1.3, conditions.temperatureC);
  const most = Math.max(1, static_ - osmotic);
  if (unit.shutOff.stuckOpen) {
    const full = tankFullKPaGauge(unit, conditions, { segments: 3 });
    return full.kind === "known" ? full.value : most;
  }
  return Math.min(most, shutOffPressureKPaGauge(static_, unit.shutOff.ratio));
}

/** Gas left in the tank at rest, L. */
export function gasAtLitres(unit: Unit, fullKPaGauge: number): number {
  let gas = 0;
  for (const tank of unit.tanks) gas += tank.volumeL - storedLitres(tank, fullKPaGauge, unit.atmosphericKPa);
  return gas;
}
