import type { Unit } from "@tapside/reverse-osmosis";

/** Flow at the open tap from a tank pressure, through what stands behind the tank; every drop grows with flow to the 1.3. */
export function outletLPerH(unit: Unit, tankKPaGauge: number): number {
  let resistance = 0;
  for (const one of unit.outletCartridges ?? [])
    resistance += (one.dropKPa * (one.clogging ?? 1)) / one.atLPerH ** 1.3;
  return resistance > 0 && tankKPaGauge > 0 ? (tankKPaGauge / resistance) ** (1 / 1.3) : 0;
}
