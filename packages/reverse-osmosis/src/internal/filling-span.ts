import { known, type Outcome, refused } from "@tapside/quantities";
import type { OperatingOptions } from "../operating-point.ts";
import type { Conditions, Unit } from "../unit.ts";
import { shutsOffAtKPaGauge } from "./shuts-off-at.ts";
import { litresInTanks } from "./tanks.ts";

/** From where to where the tank fills. */
export interface FillingSpan {
  readonly fromL: number;
  readonly toL: number;
  readonly fromKPaGauge: number;
  readonly toKPaGauge: number;
}

interface SpanOptions extends OperatingOptions {
  readonly withinKPa?: number;
  readonly fromKPaGauge?: number;
  readonly staticFeedKPaGauge?: number;
}

/** Litres and pressures between which one filling runs: from the air charge to the shut-off, a vented tank to its float. */
export function fillingSpan(
  unit: Unit,
  conditions: Omit<Conditions, "tankPressureKPaGauge">,
  options: SpanOptions = {},
): Outcome<FillingSpan> {
  if (unit.tanks.length === 0) return refused("no-tank");
  if (unit.shutOff.stuckOpen) return refused("never-shuts-off");
  if (unit.storage === "vented") return known(ventedSpan(unit));
  const end = shutsOffAtKPaGauge(unit, conditions, options.staticFeedKPaGauge, options);
  if (end.kind !== "known") return end;
  const fromKPaGauge = options.fromKPaGauge ?? Math.min(...unit.tanks.map((tank) => tank.airChargeKPaGauge));
  const fromL = litresInTanks(unit, fromKPaGauge);
  const toL = litresInTanks(unit, end.value);
  if (!(toL > fromL)) return refused("shut-off-below-air-charge", { shutOffKPaGauge: end.value });
  return known({ fromL, toL, fromKPaGauge, toKPaGauge: end.value });
}

function ventedSpan(unit: Unit): FillingSpan {
  const toL = unit.tanks.reduce((sum, tank) => sum + (tank.maximumWaterL ?? tank.volumeL), 0);
  return { fromL: 0, toL, fromKPaGauge: 0, toKPaGauge: 0 };
}
