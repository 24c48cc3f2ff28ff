import type { Engine } from "./engine.ts";
import type { Expectation } from "./expectation.ts";
import { featureOf, filledOf, inputAt, inputsOf, isShown, MEASURED_COUNT, readMask } from "./features.ts";
import { addRow, finish, firstSums, HIDDEN } from "./network.ts";
import { type Assumed, type Posterior, posteriorOf, presentOfScores } from "./posterior.ts";
import { type Readings, SIGN_IDS, type SignId } from "./signs.ts";

/** Asks the same readings again and again with a few signs more: only what those signs touch is worked out anew. */
export interface WhatIf {
  /** With nothing more read. */
  readonly now: Posterior;
  /** Of each cause being at work, if a test showed these. Signs that were read already stay as they were read. */
  after(signs: readonly SignId[]): (shown: Readings) => Float64Array;
}

/** The same as `posterior` of the readings and what is shown, to rounding, ten times as fast. */
export function whatIf(engine: Engine, expected: Expectation, readings: Readings, assumed: Assumed): WhatIf {
  const inputs = inputsOf(readings, expected);
  const now = posteriorOf(engine, inputs, assumed);
  const sums = new Float32Array(HIDDEN);
  firstSums(engine.network, inputs, sums);
  const has = readMask(readings);
  const filled = filledOf(readings, expected);
  const { w1 } = engine.network;
  return {
    now,
    after(signs) {
      const fresh = signs.filter((sign) => !has[SIGN_IDS.indexOf(sign)]);
      const then = Uint8Array.from(has);
      for (const sign of fresh) then[SIGN_IDS.indexOf(sign)] = 1;
      const touched = newlyShown(has, then);
      const base = Float32Array.from(sums);
      for (const f of touched) addRow(w1, inputAt(f) + 1, 1, base);
      const read = { ...filled };
      return (shown) => {
        for (const sign of fresh) read[sign] = shown[sign]!;
        engine.room.h1.set(base);
        for (const f of touched) addRow(w1, inputAt(f), featureOf(f, read, expected), engine.room.h1);
        finish(engine.network, engine.room);
        return presentOfScores(engine, (sign) => then[sign] === 1, assumed);
      };
    },
  };
}

/** Features that the second set shows and the first does not. */
function newlyShown(before: Uint8Array, after: Uint8Array): readonly number[] {
  const features = Array.from({ length: MEASURED_COUNT }, (_, f) => f);
  return features.filter((f) => isShown(f, after) && !isShown(f, before));
}
