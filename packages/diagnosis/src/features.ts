import { BACK_CALCULATED } from "./back-calculated.ts";
import { COMPLAINTS } from "./causes.ts";
import type { Expectation } from "./expectation.ts";
import { type Readings, SIGN_IDS, SIGNS, type SignId } from "./signs.ts";
import type { Values } from "./true-values.ts";

const clip = (x: number): number => (x > 5 ? 5 : x < -5 ? -5 : Number.isNaN(x) ? 0 : x);

/** One reading beside what the sound unit shows at its usual water: about 0 when as expected. */
function direct(id: SignId, value: number, expected: number): number {
  const kind = SIGNS[id].kind;
  if (kind === "look") return 2 * value;
  if (kind === "temperature") return (value - 14) / 4;
  if (kind === "chlorine") return Math.log((value + 0.03) / (expected + 0.03));
  if (kind === "hardness") return Math.log((value + 10) / (expected + 10));
  if (kind === "ratio") return Math.log(Math.max(0.1, value)) / 0.1;
  if (id === "drainTankFullFlow" || id === "drainFeedClosedFlow") return Math.log(1 + value / 0.4);
  const floor = kind === "pressure" ? 5 : 0.5;
  return Math.log((value + floor) / (expected + floor)) / 0.4;
}

const needsOf: readonly (readonly SignId[])[] = [
  ...SIGN_IDS.map((id) => [id]),
  ...BACK_CALCULATED.map((one) => one.needs),
];

/** Which signs each measured feature needs, as indices into `SIGN_IDS`. */
export const FEATURE_NEEDS: readonly Uint8Array[] = needsOf.map((needs) =>
  Uint8Array.from(needs, (id) => SIGN_IDS.indexOf(id)),
);

const MEASURED = FEATURE_NEEDS.length;

/** What is known before any test, as numbers. */
export function contextFeatures({ scene, sound }: Expectation): readonly number[] {
  const given = (value: number | undefined, shape: (x: number) => number) =>
    value === undefined ? [0, 0] : [clip(shape(value)), 1];
  return [
    ...COMPLAINTS.map((one) => Number(scene.complaint === one)),
    Number(scene.softener),
    Number(scene.remineraliser),
    Number(scene.blendValve),
    Number(scene.unit.booster !== undefined),
    Number(scene.baseline === "label"),
    ...given(scene.elementYears, (x) => Math.log(0.1 + x) - 0.6),
    ...given(scene.carbonShare, (x) => Math.log(0.05 + x) + 0.7),
    ...given(scene.filterMonths, (x) => Math.log(0.5 + x) - 2),
    clip((scene.usual.temperatureC - 17) / 5),
    clip(Math.log(scene.usual.feedMgPerL / 260)),
    clip(Math.log(scene.usual.feedPressureKPaGauge / 400) / 0.3),
    clip(Math.log((scene.usual.hardnessMgPerL + 10) / 100)),
    clip(Math.log((sound.drawOffL + 1) / 15)),
    clip(Math.log(sound.permeateFlow / Math.max(0.5, sound.drainFlow)) + 0.8),
  ];
}

/** Inputs of the network: context, then value and "is there" of every measured feature. */
export const INPUTS = 23 + 2 * MEASURED;
const CONTEXT = INPUTS - 2 * MEASURED;

/** One measured feature of values that hold every sign it needs. */
export function featureOf(f: number, read: Values, expected: Expectation): number {
  const id = SIGN_IDS[f];
  if (id) return clip(direct(id, read[id], expected.sound[id]));
  return clip(BACK_CALCULATED[f - SIGN_IDS.length]!.value(read, expected));
}

/** Values of all measured features; only those whose signs are all in `has` mean anything. */
export function measuredFeatures(read: Values, expected: Expectation, out: Float32Array): void {
  for (let f = 0; f < MEASURED; f++) out[f] = featureOf(f, read, expected);
}

/** Where a measured feature's value stands in the inputs; behind it stands whether it is there. */
export const inputAt = (feature: number): number => CONTEXT + 2 * feature;

/** Whether every sign a measured feature needs is in `has`. */
export function isShown(feature: number, has: Uint8Array): boolean {
  const needs = FEATURE_NEEDS[feature]!;
  for (let k = 0; k < needs.length; k++) if (!has[needs[k]!]) return false;
  return true;
}

/** The inputs with only the signs in `has` (1 or 0 by `SIGN_IDS`) shown. */
export function maskedInputs(
  context: ArrayLike<number>,
  measured: ArrayLike<number>,
  has: Uint8Array,
  out: Float32Array,
): void {
  for (let i = 0; i < CONTEXT; i++) out[i] = context[i]!;
  for (let f = 0; f < MEASURED; f++) {
    const shown = isShown(f, has);
    out[inputAt(f)] = shown ? measured[f]! : 0;
    out[inputAt(f) + 1] = Number(shown);
  }
}

export const MEASURED_COUNT = MEASURED;

/** Whether inputs show a sign, by its place in `SIGN_IDS`. */
export const isRead = (inputs: Float32Array, sign: number): boolean => inputs[inputAt(sign) + 1] === 1;

/** Which signs are read, by `SIGN_IDS`. */
export const readMask = (readings: Readings): Uint8Array =>
  Uint8Array.from(SIGN_IDS, (id) => Number(Number.isFinite(readings[id])));

/** Inputs for whatever was read; signs that were not read are absent, never guessed. */
export function inputsOf(readings: Readings, expected: Expectation): Float32Array {
  const measured = new Float32Array(MEASURED);
  measuredFeatures(filledOf(readings, expected), expected, measured);
  const inputs = new Float32Array(INPUTS);
  maskedInputs(contextFeatures(expected), measured, readMask(readings), inputs);
  return inputs;
}

/** What was read, and for the rest what a sound unit shows. */
export function filledOf(readings: Readings, { sound }: Expectation): Values {
  const filled = { ...sound };
  for (const id of SIGN_IDS) if (Number.isFinite(readings[id])) filled[id] = readings[id]!;
  return filled;
}
