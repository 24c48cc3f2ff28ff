import { CAUSE_IDS } from "../../packages/diagnosis/src/causes.ts";
import { activations, HIDDEN, type Network, OUTPUTS, run } from "../../packages/diagnosis/src/network.ts";

const K = CAUSE_IDS.length;

/** Loss of one case and its slope at the outputs. Single cause: softmax. Two: softmax over pairs with added scores. Gate: logistic. */
export function outputSlope(out: Float32Array, first: number, second: number, slope: Float32Array): number {
  slope.fill(0);
  const gate = 1 / (1 + Math.exp(-out[2 * K]!));
  const two = second >= 0 ? 1 : 0;
  slope[2 * K] = gate - two;
  const gateLoss = -Math.log(Math.max(1e-12, two ? gate : 1 - gate));
  return gateLoss + (two ? pairSlope(out, first, second, slope) : singleSlope(out, first, slope));
}

function singleSlope(out: Float32Array, target: number, slope: Float32Array): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < K; i++) most = Math.max(most, out[i]!);
  let sum = 0;
  for (let i = 0; i < K; i++) sum += Math.exp(out[i]! - most);
  for (let i = 0; i < K; i++) slope[i] = Math.exp(out[i]! - most) / sum;
  const loss = -(out[target]! - most - Math.log(sum));
  slope[target] = slope[target]! - 1;
  return loss;
}

/** Sums without the largest are taken directly: subtracting would lose them where one score towers over the rest. */
function pairSlope(out: Float32Array, a: number, b: number, slope: Float32Array): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < K; i++) most = Math.max(most, out[K + i]!);
  let before = 0;
  let all = 1e-300;
  for (let i = 0; i < K; i++) {
    const e = Math.exp(out[K + i]! - most);
    all += e * before;
    others[i] = before;
    before += e;
  }
  let after = 0;
  for (let i = K - 1; i >= 0; i--) {
    const e = Math.exp(out[K + i]! - most);
    slope[K + i] = (e * (others[i]! + after)) / all - Number(i === a || i === b);
    after += e;
  }
  return Math.log(all) - (out[K + a]! + out[K + b]! - 2 * most);
}

const others = new Float64Array(K);

/** Adds one case's slopes to `grad`; returns its loss. */
export function accumulator(network: Network, grad: Network) {
  const act = activations();
  const dOut = new Float32Array(OUTPUTS);
  const d2 = new Float32Array(HIDDEN);
  const d1 = new Float32Array(HIDDEN);
  return (inputs: Float32Array, first: number, second: number): number => {
    run(network, inputs, act);
    const loss = outputSlope(act.out, first, second, dOut);
    backwards(act.h2, dOut, network.w3, grad.w3, grad.b3, d2);
    backwards(act.h1, d2, network.w2, grad.w2, grad.b2, d1);
    backwards(inputs, d1, network.w1, grad.w1, grad.b1, undefined);
    return loss;
  };
}

function backwards(
  x: Float32Array,
  slope: Float32Array,
  w: Float32Array,
  gradW: Float32Array,
  gradB: Float32Array,
  into: Float32Array | undefined,
): void {
  const n = slope.length;
  for (let j = 0; j < n; j++) gradB[j] = gradB[j]! + slope[j]!;
  for (let i = 0; i < x.length; i++) {
    const xi = x[i]!;
    if (xi === 0) {
      if (into) into[i] = 0;
      continue;
    }
    const at = i * n;
    let sum = 0;
    for (let j = 0; j < n; j++) {
      const d = slope[j]!;
      gradW[at + j] = gradW[at + j]! + xi * d;
      sum += d * w[at + j]!;
    }
    if (into) into[i] = sum;
  }
}
