import { expect, it } from "vitest";
import { behaviourFingerprint } from "./fingerprint.ts";
import { fingerprint } from "./internal/weights.ts";

/** 0.05 is above rounding and far below what a changed law, frequency or feature does; beyond it: train anew. */
it("the weights were trained on the model, frequencies and features as they are now (else: node tools/train-diagnosis.mjs)", () => {
  const now = behaviourFingerprint();
  expect(now.length).toBe(fingerprint.length);
  const worst = Math.max(...now.map((value, i) => Math.abs(value - fingerprint[i]!)));
  expect(worst).toBeLessThan(0.05);
});
