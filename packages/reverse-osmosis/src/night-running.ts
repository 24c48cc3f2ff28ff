import { known, type Outcome, refused } from "@tapside/quantities";
import { gaussNodes } from "./internal/gauss-legendre.ts";
import { mostLiftKPa } from "./internal/strokes.ts";
import { litresInTanks, tanksPressureKPaGauge } from "./internal/tanks.ts";
import { type FlowingPoint, operatingPoint } from "./operating-point.ts";
import { shutOffPressureKPaGauge, usualHysteresis } from "./shut-off.ts";
import { standingLeakLPerH } from "./standing-leak.ts";
import type { Conditions, Unit } from "./unit.ts";

/** What a unit does all night with nobody drawing water. */
export interface NightRunning {
  /** "silent": nothing runs. "cycling": fills and leaks in turn. "never-closes": the shut-off does not stop the feed. */
  readonly how: "silent" | "cycling" | "never-closes";
  readonly drainLPerDay: number;
  /** Water bought for nothing: feed drawn a day. Equal to the drain but for what drips at the tap. */
  readonly feedLPerDay: number;
  readonly closesAtKPaGauge: number;
  readonly opensAtKPaGauge: number;
  /** Where the tank stands when the shut-off never closes. */
  readonly tankKPaGauge?: number;
  /** Dissolved solids of what then still goes through the tank to a dripping tap. */
  readonly madeMgPerL?: number;
  readonly cycle?: Cycle;
}

interface Cycle {
  readonly hours: number;
  readonly fillingHours: number;
  readonly leakingHours: number;
  readonly swingL: number;
  readonly drainFillingLPerH: number;
  readonly drainLeakingLPerH: number;
  /** Dissolved solids of the water made near the full tank, and so of the tank after a while. */
  readonly madeMgPerL: number;
}

type Standing = Omit<Conditions, "tankPressureKPaGauge">;

export interface NightOptions {
  /** Feed pressure with nothing flowing; the flowing one when not given. */
  readonly staticFeedKPaGauge?: number;
  /** Water that gets past the closed shut-off into the element's feed side and to the drain, L/h. */
  readonly shutOffSeepLPerH?: number;
  /** What drips all night at a tap or fill valve behind the tank, L/h. */
  readonly tapLeakLPerH?: number;
  readonly segments?: number;
}

/**
 * Night running: cycle period and litres wasted a day when the check valve, the shut-off or a tap leaks.
 *
 * Formula: leaking hours = ∫ dV/(back leak + tap), filling hours = ∫ dV/(Qp − tap), between the pressures at which the shut-off opens and
 * closes; Gauss quadrature over stored litres; drain = that of both times
 * Source: Boyle's law and `operatingPoint`; the leak by `standingLeakLPerH`.
 * Range: nobody draws; pressurised tank.
 * Error: 3 % against a worked visit; as good as the shut-off's own hysteresis is known.
 * @example
 * ```ts
 * import { nightRunning, simpleUnit } from "@tapside/reverse-osmosis";
 * const tank = { volumeL: 53, airChargeKPaGauge: 62 };
 * const unit = simpleUnit({ areaM2: 1.1, waterLPerM2HBar: 4.3, saltLPerM2H: 0.66 }, { ratedLPerH: 35, ratedKPa: 414 }, tank);
 * const leaky = { ...unit, backLeakLPerHBar: 1000, shutOff: { ratio: 0.64, hysteresis: 0.054 } };
 * const night = nightRunning(leaky, { feedPressureKPaGauge: 400, temperatureC: 21, feedMgPerL: 265 });
 * night.kind === "known" ? night.value.how : night.kind; // => "cycling"
 * ```
 */
export function nightRunning(
  unit: Unit,
  standing: Standing,
  options: NightOptions = {},
): Outcome<NightRunning> {
  if (unit.tanks.length === 0) return refused("no-tank");
  if (unit.storage === "vented") return refused("vented-tank");
  const feed = options.staticFeedKPaGauge ?? standing.feedPressureKPaGauge;
  const closesAtKPaGauge = shutOffPressureKPaGauge(feed, unit.shutOff.ratio);
  const hysteresis = unit.shutOff.hysteresis ?? usualHysteresis;
  const opensAtKPaGauge = shutOffPressureKPaGauge(feed, Math.max(0, unit.shutOff.ratio - hysteresis));
  const limits = { closesAtKPaGauge, opensAtKPaGauge };
  const tap = Math.max(0, options.tapLeakLPerH ?? 0);
  if (unit.shutOff.stuckOpen) return neverCloses(unit, standing, limits, tap);
  const full = operatingPoint(unit, { ...standing, tankPressureKPaGauge: closesAtKPaGauge }, options);
  if (full.kind === "refused") return full;
  if (full.kind !== "flowing" || full.productLPerH <= tap) return neverCloses(unit, standing, limits, tap);
  const seep = Math.max(0, options.shutOffSeepLPerH ?? 0);
  if (!(tap + standingLeakLPerH(unit, closesAtKPaGauge, standing.temperatureC) > 0)) {
    const drainLPerDay = 24 * seep;
    return known({ how: "silent", drainLPerDay, feedLPerDay: drainLPerDay, ...limits });
  }
  return cycling(unit, standing, { ...limits, seep, tap, segments: options.segments ?? 20 });
}

type Limits = Pick<NightRunning, "closesAtKPaGauge" | "opensAtKPaGauge">;

/** The tank rises until no more permeate flows than drips; the drain runs by day and night. */
function neverCloses(unit: Unit, standing: Standing, limits: Limits, tap: number): Outcome<NightRunning> {
  const at = (tankPressureKPaGauge: number) => operatingPoint(unit, { ...standing, tankPressureKPaGauge });
  const open = at(0);
  if (open.kind === "refused") return open;
  let [low, high] = [0, mostLiftKPa(unit, open.elementPressureKPaGauge)];
  for (let n = 0; n < 40; n++) {
    const middle = (low + high) / 2;
    const point = at(middle);
    if (point.kind === "flowing" && point.productLPerH > tap) low = middle;
    else high = middle;
  }
  const end = at(tap > 0 ? low : high + 1e-6);
  if (end.kind === "refused") return end;
  const drainLPerDay = 24 * end.concentrateLPerH;
  return known({
    how: "never-closes",
    drainLPerDay,
    feedLPerDay: drainLPerDay + 24 * tap,
    tankKPaGauge: low,
    ...(tap > 0 && end.kind === "flowing" && { madeMgPerL: end.productMgPerL }),
    ...limits,
  });
}

interface Sums {
  fillingHours: number;
  leakingHours: number;
  drainFillingL: number;
  drainLeakingL: number;
  madeL: number;
  saltMg: number;
}

function cycling(
  unit: Unit,
  standing: Standing,
  swing: Limits & { readonly seep: number; readonly tap: number; readonly segments: number },
): Outcome<NightRunning> {
  const { seep, tap, segments, closesAtKPaGauge, opensAtKPaGauge } = swing;
  const fullL = litresInTanks(unit, closesAtKPaGauge);
  const swingL = fullL - litresInTanks(unit, opensAtKPaGauge);
  if (!(swingL > 0)) return refused("shut-off-below-air-charge", { shutOffKPaGauge: closesAtKPaGauge });
  const sums: Sums = {
    fillingHours: 0,
    leakingHours: 0,
    drainFillingL: 0,
    drainLeakingL: 0,
    madeL: 0,
    saltMg: 0,
  };
  for (const [position, weight] of gaussNodes) {
    const tankKPa = tanksPressureKPaGauge(unit, fullL - position * swingL);
    const point = operatingPoint(unit, { ...standing, tankPressureKPaGauge: tankKPa }, { segments });
    if (point.kind === "refused") return point;
    if (point.kind !== "flowing") return refused("never-shuts-off");
    const backLPerH = standingLeakLPerH(unit, tankKPa, standing.temperatureC);
    addNode(sums, weight * swingL, point, { backLPerH, tap });
  }
  const hours = sums.fillingHours + sums.leakingHours;
  const drainLPerDay = (24 * (sums.drainFillingL + sums.drainLeakingL + seep * sums.leakingHours)) / hours;
  const cycle: Cycle = {
    hours,
    fillingHours: sums.fillingHours,
    leakingHours: sums.leakingHours,
    swingL,
    drainFillingLPerH: sums.drainFillingL / sums.fillingHours,
    drainLeakingLPerH: sums.drainLeakingL / sums.leakingHours + seep,
    madeMgPerL: sums.saltMg / sums.madeL,
  };
  return known({
    how: "cycling",
    drainLPerDay,
    feedLPerDay: drainLPerDay + 24 * tap,
    closesAtKPaGauge,
    opensAtKPaGauge,
    cycle,
  });
}

function addNode(
  sums: Sums,
  litres: number,
  point: FlowingPoint,
  leak: { readonly backLPerH: number; readonly tap: number },
): void {
  const fillingHours = litres / (point.productLPerH - leak.tap);
  const leakingHours = litres / (leak.backLPerH + leak.tap);
  const madeL = fillingHours * point.productLPerH;
  sums.fillingHours += fillingHours;
  sums.leakingHours += leakingHours;
  sums.drainFillingL += fillingHours * point.concentrateLPerH;
  sums.drainLeakingL += leakingHours * leak.backLPerH;
  sums.madeL += madeL;
  sums.saltMg += madeL * point.productMgPerL;
}
