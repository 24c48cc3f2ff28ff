import { APPLY } from "./apply-cause.ts";
import type { CauseId } from "./causes.ts";
import type { Hidden } from "./hidden.ts";
import { soundHidden } from "./hidden.ts";
import { solveSymmetric } from "./internal/solve-symmetric.ts";
import type { Random } from "./random.ts";
import type { Scene } from "./scene.ts";
import { type Readings, SIGN_IDS, SIGNS, type SignId } from "./signs.ts";
import { trueValues, type Values } from "./true-values.ts";

/** One way a truth may differ from the record, in standard deviations of its own scatter. */
interface Freedom {
  readonly apply: (hidden: Hidden, z: number) => Hidden;
}

const withUnit = (h: Hidden, part: Partial<Hidden["situation"]["unit"]>): Hidden => ({
  ...h,
  situation: { ...h.situation, unit: { ...h.situation.unit, ...part } },
});

/** The freedoms of a sound unit; the spreads are those of the population the network learnt from. */
function freedoms(scene: Scene): readonly Freedom[] {
  const known =
    scene.baseline === "commissioned" ? { a: 0.05, b: 0.12, r: 0.05 } : { a: 0.13, b: 0.28, r: 0.09 };
  return [
    { apply: (h, z) => elements(h, Math.exp(known.a * z), 1) },
    { apply: (h, z) => elements(h, 1, Math.exp(known.b * z)) },
    {
      apply: (h, z) =>
        withUnit(h, {
          restrictor: {
            ...h.situation.unit.restrictor,
            scale: (h.situation.unit.restrictor.scale ?? 1) * Math.exp(known.r * z),
          },
        }),
    },
    {
      apply: (h, z) =>
        withUnit(h, {
          cartridges: h.situation.unit.cartridges.map((one) => ({
            ...one,
            clogging: (one.clogging ?? 1) * Math.exp(0.5 * z),
          })),
        }),
    },
    {
      apply: (h, z) =>
        withUnit(h, {
          outletCartridges: (h.situation.unit.outletCartridges ?? []).map((one) => ({
            ...one,
            clogging: (one.clogging ?? 1) * Math.exp(0.15 * z),
          })),
        }),
    },
    {
      apply: (h, z) =>
        withUnit(h, {
          tanks: h.situation.unit.tanks.map((tank) => ({
            ...tank,
            airChargeKPaGauge: Math.max(1, tank.airChargeKPaGauge + 7 * z),
          })),
        }),
    },
    {
      apply: (h, z) =>
        withUnit(h, {
          shutOff: { ...h.situation.unit.shutOff, ratio: h.situation.unit.shutOff.ratio + 0.02 * z },
        }),
    },
    { apply: (h, z) => pressures(h, Math.exp(0.06 * z), 1) },
    { apply: (h, z) => pressures(h, 1, Math.exp(0.035 * z)) },
    { apply: (h, z) => conditions(h, { temperatureC: h.situation.conditions.temperatureC + 3 * z }) },
    {
      apply: (h, z) => conditions(h, { feedMgPerL: h.situation.conditions.feedMgPerL * Math.exp(0.09 * z) }),
    },
    { apply: (h, z) => ({ ...h, chlorineMgPerL: h.chlorineMgPerL * Math.exp(0.25 * z) }) },
    { apply: (h, z) => ({ ...h, carbonPass: h.carbonPass * Math.exp(0.6 * z) }) },
    {
      apply: (h, z) => ({
        ...h,
        hardnessMgPerL: h.hardnessMgPerL * Math.exp((scene.softener ? 0.5 : 0.12) * z),
      }),
    },
    { apply: (h, z) => ({ ...h, firstDrawFactor: 1 + (h.firstDrawFactor - 1) * Math.exp(0.4 * z) }) },
    { apply: (h, z) => ({ ...h, dailyLitres: h.dailyLitres * Math.exp(0.4 * z) }) },
  ];
}

function elements(h: Hidden, water: number, salt: number): Hidden {
  return withUnit(h, {
    elements: h.situation.unit.elements.map((one) => ({
      ...one,
      waterLPerM2HBar: one.waterLPerM2HBar * water,
      saltLPerM2H: one.saltLPerM2H * salt,
    })),
  });
}

const conditions = (h: Hidden, part: Partial<Hidden["situation"]["conditions"]>): Hidden => ({
  ...h,
  situation: { ...h.situation, conditions: { ...h.situation.conditions, ...part } },
});

const pressures = (h: Hidden, feed: number, stat: number): Hidden => ({
  ...conditions(h, { feedPressureKPaGauge: h.situation.conditions.feedPressureKPaGauge * feed }),
  staticPressureKPaGauge: h.staticPressureKPaGauge * feed * stat,
});

/** What a truth is told in: one number, or nothing where the unit has no such part. */
export type Tell = (truth: Hidden) => number | undefined;

export interface CauseFit {
  readonly causes: readonly CauseId[];
  /** From 0 (mild) to 1 (severe), one a cause. */
  readonly shares: readonly number[];
  /** Half width of the shares, one standard deviation, with everything else left free (Laplace). */
  readonly uShares: readonly number[];
  /** Standard deviation of something the unit would have, from the readings' scatter and the unit's own (Laplace, linear). */
  uOf(tell: Tell): number;
  /** Squared distances of readings and freedoms together, each over its variance. */
  readonly misfit: number;
  /** The same with every reading counting no more than `MOST_OF_ONE`: one slip of a meter is no unknown fault. */
  readonly cappedMisfit: number;
  readonly count: number;
  /** What it would read at every sign. */
  readonly wouldRead: Values;
  /** The unit as it would be. */
  readonly truth: Hidden;
}

/** Chosen with `UNEXPLAINED_BELOW` on simulated visits with seeds of their own. */
const MOST_OF_ONE = 7;

/** What the model itself is off, relative. */
const MODEL_RELATIVE = 0.02;

const spread = (id: SignId, value: number): number =>
  Math.hypot(SIGNS[id].relative * value, MODEL_RELATIVE * value, SIGNS[id].floor) || 1e-6;

/** −2 log of the chance of a look, or the squared distance of a number. */
function lookMisfit(shown: number, true_: number, wrong: number): number {
  return -2 * Math.log(Math.round(shown) === true_ ? 1 - wrong : wrong) + 2 * Math.log(1 - wrong);
}

/** A stream that always says the same: every drawn branch of a cause falls one way. */
const always =
  (value: number): Random =>
  () =>
    value;

interface Model {
  readonly scene: Scene;
  readonly causes: readonly CauseId[];
  readonly free: readonly Freedom[];
  readonly branch: Random;
  readonly numbers: readonly SignId[];
  readonly readings: Readings;
}

function truthOf(model: Model, z: readonly number[]): Hidden {
  const n = model.free.length;
  const sound = model.free.reduce((h, one, i) => one.apply(h, z[i]!), soundAt(model.scene));
  return model.causes.reduce(
    (h, cause, i) => APPLY[cause](h, Math.min(1.15, Math.max(-0.15, z[n + i]!)), model.branch),
    sound,
  );
}

/** Typical everyday demand belongs to a sound unit of this size. */
function soundAt(scene: Scene): Hidden {
  const made = scene.unit.elements.reduce((sum, one) => sum + one.areaM2 * one.waterLPerM2HBar * 4, 0);
  return { ...soundHidden(scene), dailyLitres: 24 * made * 0.18 };
}

function residuals(model: Model, values: Values): number[] {
  return model.numbers.map((id) => (model.readings[id]! - values[id]) / spread(id, values[id]));
}

/** Gauss–Newton with damping from the middle of the ranges. */
function descend(model: Model, startShare: number) {
  const n = model.free.length + model.causes.length;
  let z = Array.from({ length: n }, (_, i) => (i < model.free.length ? 0 : startShare));
  const prior = (x: readonly number[]) => x.map((v, i) => (i < model.free.length ? v : (v - 0.5) / 0.6));
  let values = trueValues(truthOf(model, z));
  let r = residuals(model, values);
  let cost = sumSquares(r) + sumSquares(prior(z));
  let damping = 0.05;
  let normal: number[][] = [];
  for (let step = 0; step < 7; step++) {
    const jacobian = z.map((value, k) => {
      const moved = z.slice();
      const h = k < model.free.length ? 0.15 : value > 0.5 ? -0.03 : 0.03;
      moved[k] = value + h;
      const shifted = residuals(model, trueValues(truthOf(model, moved)));
      return shifted.map((one, i) => (one - r[i]!) / h);
    });
    const p = prior(z);
    const weight = (k: number) => (k < model.free.length ? 1 : 1 / 0.6);
    const gradient = jacobian.map((row, k) => dot(row, r) + weight(k) * p[k]!);
    normal = jacobian.map((a, k) => jacobian.map((b, l) => dot(a, b) + (k === l ? weight(k) ** 2 : 0)));
    const before = cost;
    for (let trial = 0; trial < 4; trial++) {
      const damped = normal.map((row, k) => row.map((v, l) => (k === l ? v * (1 + damping) : v)));
      const delta = solveSymmetric(damped, gradient);
      const next = z.map((v, k) => {
        const moved = v - Math.max(-1.5, Math.min(1.5, delta[k]!));
        return k < model.free.length ? moved : Math.min(1.1, Math.max(-0.1, moved));
      });
      const nextValues = trueValues(truthOf(model, next));
      const nextR = residuals(model, nextValues);
      const nextCost = sumSquares(nextR) + sumSquares(prior(next));
      if (nextCost < cost) {
        [z, values, r, cost] = [next, nextValues, nextR, nextCost];
        damping = Math.max(1e-3, damping / 5);
        break;
      }
      damping *= 8;
    }
    if (before - cost < 0.05) break;
  }
  return { z, values, cost, normal };
}

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, v, i) => sum + v * b[i]!, 0);
const sumSquares = (a: readonly number[]) => dot(a, a);

/** What the squared distances hold above the most that one may count. */
const excess = (r: readonly number[]): number =>
  r.reduce((sum, one) => sum + Math.max(0, one * one - MOST_OF_ONE), 0);

const unitVector = (n: number, at: number): number[] => Array.from({ length: n }, (_, i) => Number(i === at));

/** Standard deviation along a gradient: the normal matrix is the inverse of the covariance. */
const widthAlong = (normal: readonly (readonly number[])[], gradient: readonly number[]): number =>
  Math.sqrt(Math.max(0, dot(gradient, solveSymmetric(normal, gradient))));

/** Of a number the truth tells, by how it moves with every freedom and size. */
function uAt(model: Model, z: readonly number[], normal: readonly (readonly number[])[], tell: Tell): number {
  const told = (x: readonly number[]) => tell(truthOf(model, x)) ?? 0;
  const gradient = z.map((_, k) => {
    const h = k < model.free.length ? 0.15 : 0.05;
    const moved = (by: number) => told(z.map((v, i) => (i === k ? v + by : v)));
    return (moved(h) - moved(-h)) / (2 * h);
  });
  return widthAlong(normal, gradient);
}

/** How large the given causes are, if they are what is wrong, and how badly the readings still fit. */
export function fitCauses(scene: Scene, causes: readonly CauseId[], readings: Readings): CauseFit {
  const taken = SIGN_IDS.filter((id) => Number.isFinite(readings[id]));
  const numbers = taken.filter((id) => SIGNS[id].kind !== "look");
  const looks = taken.filter((id) => SIGNS[id].kind === "look");
  const free = freedoms(scene);
  const tries = [0.3, 0.7].map((side) => {
    const model = { scene, causes, free, branch: always(side), numbers, readings };
    const found = descend(model, 0.5);
    const seen = looks.reduce(
      (sum, id) => sum + lookMisfit(readings[id]!, Math.round(found.values[id]), SIGNS[id].relative),
      0,
    );
    return { ...found, model, misfit: found.cost + seen };
  });
  const best = tries.reduce((a, b) => (b.misfit < a.misfit ? b : a));
  const from = free.length;
  const uOf = (tell: Tell) => uAt(best.model, best.z, best.normal, tell);
  return {
    causes,
    shares: causes.map((_, i) => Math.min(1, Math.max(0, best.z[from + i]!))),
    uShares: causes.map((_, i) => widthAlong(best.normal, unitVector(best.z.length, from + i))),
    uOf,
    misfit: best.misfit,
    cappedMisfit: best.misfit - excess(residuals(best.model, best.values)),
    count: taken.length,
    wouldRead: best.values,
    truth: truthOf(best.model, best.z),
  };
}
