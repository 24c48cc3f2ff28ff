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

/** out += x · row. */
export function addRow(w: Float32Array, row: number, x: number, out: Float32Array): void {
  const n = out.length;
  const at = row * n;
  for (let j = 0; j < n; j++) out[j] = out[j]! + x * w[at + j]!;
}

/** The inputs that are not zero. */
const active = new Int16Array(Math.max(INPUTS, HIDDEN));

/** out = b + Σ xᵢ wᵢ; zero inputs are skipped, four rows are added at a time. */
function layer(x: Float32Array, w: Float32Array, b: Float32Array, out: Float32Array): void {
  let count = 0;
  for (let i = 0; i < x.length; i++) if (x[i] !== 0) active[count++] = i;
  out.set(b);
  let k = 0;
  for (; k + 3 < count; k += 4) addFourRows(x, w, k, out);
  for (; k < count; k++) addRow(w, active[k]!, x[active[k]!]!, out);
}

/** The sums are fetched and put back once for four rows: most of the time goes there. */
function addFourRows(x: Float32Array, w: Float32Array, k: number, out: Float32Array): void {
  const n = out.length;
  const [a, b, c, d] = [active[k]!, active[k + 1]!, active[k + 2]!, active[k + 3]!];
  const [xa, xb, xc, xd] = [x[a]!, x[b]!, x[c]!, x[d]!];
  const [ra, rb, rc, rd] = [a * n, b * n, c * n, d * n];
  for (let j = 0; j < n; j++)
    out[j] = out[j]! + xa * w[ra + j]! + xb * w[rb + j]! + xc * w[rc + j]! + xd * w[rd + j]!;
}

function rectify(x: Float32Array): void {
  for (let i = 0; i < x.length; i++) if (x[i]! < 0) x[i] = 0;
}

/** Runs the network; the answer stands in `into.out`. */
export function run(network: Network, inputs: Float32Array, into: Activations): void {
  firstSums(network, inputs, into.h1);
  finish(network, into);
}

/** The sums of the first layer: linear in the inputs, so that a changed input only adds its row. */
export const firstSums = (network: Network, inputs: Float32Array, h1: Float32Array): void =>
  layer(inputs, network.w1, network.b1, h1);

/** From the sums of the first layer, standing in `into.h1`, to the answer in `into.out`. */
export function finish(network: Network, into: Activations): void {
  rectify(into.h1);
  layer(into.h1, network.w2, network.b2, into.h2);
  rectify(into.h2);
  layer(into.h2, network.w3, network.b3, into.out);
}
