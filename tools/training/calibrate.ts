import { CAUSE_IDS } from "../../packages/diagnosis/src/causes.ts";
import type { Calibration } from "../../packages/diagnosis/src/engine.ts";
import { INPUTS } from "../../packages/diagnosis/src/features.ts";
import { activations, type Network, OUTPUTS, run } from "../../packages/diagnosis/src/network.ts";
import type { Random } from "../../packages/diagnosis/src/random.ts";
import { SIGN_IDS } from "../../packages/diagnosis/src/signs.ts";
import type { Dataset } from "./dataset.ts";
import { outputSlope } from "./gradient.ts";
import { sampleInputs } from "./train.ts";

const K = CAUSE_IDS.length;

/** Divisors of the scores that lose least on cases the network has not seen (temperature scaling, Guo and others 2017). */
export function calibrate(network: Network, data: Dataset, random: Random): Calibration {
  const inputs = new Float32Array(INPUTS);
  const has = new Uint8Array(SIGN_IDS.length);
  const room = activations();
  const outs = Array.from({ length: data.size }, (_, i) => {
    sampleInputs(data, i, random, has, inputs);
    run(network, inputs, room);
    return { out: room.out.slice(), first: data.first[i]!, second: data.second[i]! };
  });
  const slope = new Float32Array(OUTPUTS);
  const scaled = new Float32Array(OUTPUTS);
  const lossAt = (t: Calibration) =>
    outs.reduce((sum, { out, first, second }) => {
      for (let i = 0; i < OUTPUTS; i++) scaled[i] = out[i]! / (i < K ? t.single : i < 2 * K ? t.pair : t.two);
      return sum + outputSlope(scaled, first, second, slope);
    }, 0) / outs.length;
  const grid = Array.from({ length: 26 }, (_, i) => 0.7 + 0.04 * i);
  const best = (key: keyof Calibration) => {
    const losses = grid.map((value) => lossAt({ single: 1, pair: 1, two: 1, [key]: value }));
    return grid[losses.indexOf(Math.min(...losses))]!;
  };
  return { single: best("single"), pair: best("pair"), two: best("two") };
}
