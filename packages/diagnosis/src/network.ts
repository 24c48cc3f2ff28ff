import { CAUSE_IDS } from "./causes.ts";
import { INPUTS } from "./features.ts";

export const HIDDEN = 128;
const CAUSES = CAUSE_IDS.length;
/** Single causes, pairs (one score a cause, added), and whether there are two. */
export const OUTPUTS = 2 * CAUSES + 1;

/** Two hidden layers; every matrix lies input by input, so that absent inputs cost nothing. */
export interface Network {
  readonly w1: Float32Array;
  readonly b1: Float32Array;
  readonly w2: Float32Array;
  readonly b2: Float32Array;
  readonly w3: Float32Array;
  readonly b3: Float32Array;
}

export const emptyNetwork = (): Network => ({
  w1: new Float32Array(INPUTS * HIDDEN),
  b1: new Float32Array(HIDDEN),
  w2: new Float32Array(HIDDEN * HIDDEN),
  b2: new Float32Array(HIDDEN),
  w3: new Float32Array(HIDDEN * OUTPUTS),
  b3: new Float32Array(OUTPUTS),
});

export interface Activations {
  readonly h1: Float32Array;
  readonly h2: Float32Array;
  readonly out: Float32Array;
}

export const activations = (): Activations => ({
  h1: new Float32Array(HIDDEN),
  h2: new Float32Array(HIDDEN),
  out: new Float32Array(OUTPUTS),
});

/** out = b + Σ xᵢ wᵢ; zero inputs are skipped. */
function layer(x: Float32Array, w: Float32Array, b: Float32Array, out: Float32Array): void {
  out.set(b);
  const n = out.length;
  for (let i = 0; i < x.length; i++) {
    const xi = x[i]!;
    if (xi === 0) continue;
    const at = i * n;
    for (let j = 0; j < n; j++) out[j] = out[j]! + xi * w[at + j]!;
  }
}

function rectify(x: Float32Array): void {
  for (let i = 0; i < x.length; i++) if (x[i]! < 0) x[i] = 0;
}

/** Runs the network; the answer stands in `into.out`. */
export function run(network: Network, inputs: Float32Array, into: Activations): void {
  layer(inputs, network.w1, network.b1, into.h1);
  rectify(into.h1);
  layer(into.h1, network.w2, network.b2, into.h2);
  rectify(into.h2);
  layer(into.h2, network.w3, network.b3, into.out);
}
