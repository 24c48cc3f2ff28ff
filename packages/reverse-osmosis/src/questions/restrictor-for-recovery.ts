import { known, type Outcome, refused } from "@tapside/quantities";
import type { WaterAnalysis } from "@tapside/water";
import { type Interval, type Scatter, usualScatter } from "../expected-readings.ts";
import { bracketedRoot } from "../internal/bracketed-root.ts";
import { type Draw, middleDraw, variedUnit } from "../internal/varied-unit.ts";
import { operatingPoint } from "../operating-point.ts";
import { restrictorLPerH } from "../restrictor.ts";
import type { Conditions, Unit } from "../unit.ts";
import { type HighestRecovery, highestRecovery, type ScalingLimits } from "./highest-recovery.ts";

export type Season = "winter" | "summer";

export interface RestrictorQuestion {
  readonly seasons: Readonly<Record<Season, Conditions>>;
  /** As a fraction, in the season in which it is higher. */
  readonly wantedRecovery: number;
  /** The feed water at each season's temperature; without it nothing is said about scale. */
  readonly feed?: Readonly<Record<Season, WaterAnalysis>>;
  readonly limits?: ScalingLimits;
  readonly scatter?: Scatter;
}

export interface RestrictorAnswer {
  /** The restrictor's flow at `ratedKPa`. */
  readonly ratedLPerH: number;
  readonly ratedKPa: number;
  readonly recovery: Readonly<Record<Season, Interval>>;
  readonly setBy: "wanted" | "scale";
  readonly scale: Readonly<Record<Season, Outcome<HighestRecovery>>>;
}

const ratedKPa = 414;
const seasons: readonly Season[] = ["winter", "summer"];

/**
 * Restrictor for a wanted recovery in winter and summer without scale.
 *
 * Formula: the scale of the restrictor's law at which the higher of both recoveries equals min(wanted, highest recovery without scale)
 * Source: `operatingPoint`; scale by `highestRecovery`. A fixed restrictor gives one flow while permeate falls with cold (EPA WaterSense P101CQSP).
 * Range: recoveries that a restrictor of 1/20 to 20 times this one can give, else refused.
 * Error: intervals from `usualScatter` to first order; SI as in `highestRecovery`.
 * @example
 * ```ts
 * import { restrictorForRecovery, simpleUnit } from "@tapside/reverse-osmosis";
 * const unit = simpleUnit({ areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65 }, { ratedLPerH: 45, ratedKPa: 414 });
 * const at = (temperatureC: number) => ({ feedPressureKPaGauge: 414, temperatureC, feedMgPerL: 300, tankPressureKPaGauge: 0 });
 * const answer = restrictorForRecovery(unit, { seasons: { winter: at(6), summer: at(20) }, wantedRecovery: 0.25 });
 * answer.kind === "known" ? answer.value.recovery.summer.value : 0; // => 0.25
 * ```
 */
export function restrictorForRecovery(unit: Unit, question: RestrictorQuestion): Outcome<RestrictorAnswer> {
  const { wantedRecovery, scatter = usualScatter } = question;
  if (!(wantedRecovery > 0 && wantedRecovery < 1))
    return refused("recovery-out-of-range", { recovery: wantedRecovery });
  const scale = {
    winter: scaleIn("winter", question),
    summer: scaleIn("summer", question),
  };
  const limits = seasons.map((season) => {
    const one = scale[season];
    return one.kind === "known" ? one.value.recovery : Number.POSITIVE_INFINITY;
  });
  const factor = factorFor(unit, question, limits as [number, number]);
  if (factor.kind !== "known") return factor;
  const chosen = scaled(unit, factor.value);
  const recovery = (season: Season) => recoveryInterval(chosen, question.seasons[season], scatter);
  const [winter, summer] = [recovery("winter"), recovery("summer")];
  if (winter.kind !== "known") return winter;
  if (summer.kind !== "known") return summer;
  const highest = Math.max(winter.value.value, summer.value.value);
  return known({
    ratedLPerH: restrictorLPerH(chosen.restrictor, ratedKPa, 20),
    ratedKPa,
    recovery: { winter: winter.value, summer: summer.value },
    setBy: highest < wantedRecovery * (1 - 1e-6) ? "scale" : "wanted",
    scale,
  });
}

const scaleIn = (season: Season, question: RestrictorQuestion): Outcome<HighestRecovery> =>
  question.feed
    ? highestRecovery(question.feed[season], question.limits)
    : { kind: "missing", missing: ["waterAnalysis"] };

const scaled = (unit: Unit, factor: number): Unit => ({
  ...unit,
  restrictor: { ...unit.restrictor, scale: (unit.restrictor.scale ?? 1) * factor },
});

function recoveryOf(unit: Unit, conditions: Conditions): Outcome<number> {
  const point = operatingPoint(unit, conditions);
  if (point.kind === "refused") return point;
  return point.kind === "flowing" ? known(point.recovery) : refused(point.kind);
}

/** Recovery falls as the restrictor opens, so the largest excess over any limit has one root in the logarithm of the factor. */
function factorFor(
  unit: Unit,
  question: RestrictorQuestion,
  limits: readonly [number, number],
): Outcome<number> {
  let failure: Outcome<number> | undefined;
  const excess = (logFactor: number) => {
    const over = seasons.map((season, i) => {
      const one = recoveryOf(scaled(unit, Math.exp(logFactor)), question.seasons[season]);
      if (one.kind !== "known") failure = one;
      return (one.kind === "known" ? one.value : 0) - Math.min(question.wantedRecovery, limits[i]!);
    });
    return Math.max(...over);
  };
  const root = bracketedRoot(excess, Math.log(1 / 20), Math.log(20), { x: 1e-9, f: 1e-8 });
  if (failure && failure.kind !== "known") return failure;
  if (root.kind === "no-sign-change")
    return refused("no-such-restrictor", { recovery: question.wantedRecovery });
  return known(Math.exp(root.x));
}

const drawn: readonly (keyof Draw)[] = ["water", "restrictor", "filter"];

function recoveryInterval(unit: Unit, conditions: Conditions, scatter: Scatter): Outcome<Interval> {
  const centre = recoveryOf(unit, conditions);
  if (centre.kind !== "known") return centre;
  let variance = 0;
  for (const name of drawn) {
    const ends = [1, -1].map((n) =>
      recoveryOf(variedUnit(unit, scatter, { ...middleDraw, [name]: n }), conditions),
    );
    const [up, down] = ends;
    if (up?.kind === "known" && down?.kind === "known") variance += ((up.value - down.value) / 2) ** 2;
  }
  const spread = 1.96 * Math.sqrt(variance);
  const { value } = centre;
  return known({ value, low: Math.max(0, value - spread), high: Math.min(1, value + spread) });
}
