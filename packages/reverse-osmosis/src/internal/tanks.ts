import { storedLitres, tankPressureKPaGauge } from "../tank.ts";
import type { Unit } from "../unit.ts";
import { bracketedRoot } from "./bracketed-root.ts";

/** Water in all tanks at one common pressure, L. */
export function litresInTanks(unit: Unit, pressureKPaGauge: number): number {
  let sum = 0;
  for (const tank of unit.tanks) sum += storedLitres(tank, pressureKPaGauge, unit.atmosphericKPa);
  return sum;
}

/** Common pressure of all tanks holding some litres together; tanks with different charges fill one after the other. */
export function tanksPressureKPaGauge(unit: Unit, litres: number): number {
  const [only] = unit.tanks;
  if (unit.tanks.length === 1 && only) return tankPressureKPaGauge(only, litres, unit.atmosphericKPa);
  const low = Math.min(...unit.tanks.map((tank) => tank.airChargeKPaGauge));
  const root = bracketedRoot((p) => litresInTanks(unit, p) - litres, low, low + 5000, { x: 1e-9, f: 1e-10 });
  return root.kind === "no-sign-change" ? low : root.x;
}
