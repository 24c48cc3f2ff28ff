import { known, type Outcome, refused } from "@tapside/quantities";
import { bracketedRoot } from "./internal/bracketed-root.ts";
import { feedSide } from "./internal/feed-side.ts";
import { shutsOffAtKPaGauge } from "./internal/shuts-off-at.ts";
import { mostLiftKPa } from "./internal/strokes.ts";
import { operatingPoint } from "./operating-point.ts";
import type { Conditions, Unit } from "./unit.ts";

/** Share of the empty tank's flow at which a tank that is never shut off is called full. */
const trickle = 0.05;

/**
 * Pressure a full tank stands at, kPa gauge: where the shut-off closes, or, when it never does, where the flow has become a trickle.
 *
 * Formula: shut-off's ratio × pressure before it; stuck open: permeate(P) = 5 % of permeate(0)
 * Source: common practice, no source: the shut-off; the twentieth is a choice, good to a few kPa for a night.
 * Range: pressurised tanks.
 * Error: that of the ratio; a stuck-open unit left for days creeps on towards the feed pressure.
 * @example
 * ```ts
 * import { simpleUnit, tankFullKPaGauge } from "@tapside/reverse-osmosis";
 * const element = { areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65 };
 * const unit = simpleUnit(element, { ratedLPerH: 45, ratedKPa: 414 }, { volumeL: 53, airChargeKPaGauge: 50 });
 * tankFullKPaGauge(unit, { feedPressureKPaGauge: 400, temperatureC: 15, feedMgPerL: 300 }); // => { "kind": "known", "value": 256 }
 * ```
 */
export function tankFullKPaGauge(
  unit: Unit,
  conditions: Omit<Conditions, "tankPressureKPaGauge">,
  options: { readonly staticFeedKPaGauge?: number | undefined; readonly segments?: number } = {},
): Outcome<number> {
  if (unit.tanks.length === 0) return refused("no-tank");
  if (unit.storage === "vented") return refused("vented-tank");
  if (!unit.shutOff.stuckOpen) return shutsOffAtKPaGauge(unit, conditions, options.staticFeedKPaGauge);
  const flow = (tankPressureKPaGauge: number) => {
    const point = operatingPoint(unit, { ...conditions, tankPressureKPaGauge }, options);
    return point.kind === "flowing" ? point.permeateLPerH : 0;
  };
  const open = flow(0);
  if (!(open > 0)) return refused("no-flow");
  const most = Math.min(2000, mostLiftKPa(unit, feedSide(unit, conditions).elementKPa(0)));
  const root = bracketedRoot((p) => flow(p) - trickle * open, 0, most, { x: 0.01, f: 1e-4 * open });
  return root.kind === "no-sign-change" ? known(most) : known(root.x);
}
