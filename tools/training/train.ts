import { INPUTS, MEASURED_COUNT, maskedInputs } from "../../packages/diagnosis/src/features.ts";
import { emptyNetwork, HIDDEN, type Network } from "../../packages/diagnosis/src/network.ts";
import { normal, type Random } from "../../packages/diagnosis/src/random.ts";
import { SIGN_IDS } from "../../packages/diagnosis/src/signs.ts";
import { TEST_IDS, TESTS } from "../../packages/diagnosis/src/test-catalogue.ts";
import { CONTEXT, type Dataset, TAKES } from "./dataset.ts";
import { accumulator } from "./gradient.ts";

const SIGNS_OF = TEST_IDS.map((id) => TESTS[id].signs.map((sign) => SIGN_IDS.indexOf(sign)));
const BOOSTER_ONLY = TEST_IDS.indexOf("elementPressure");

/** Which signs are shown: everything, a few tests, or any share of them. */
export function drawMask(random: Random, noBooster: boolean, has: Uint8Array): void {
  has.fill(0);
  const mode = random();
  const share = mode < 0.3 ? 1 : mode < 0.5 ? random() * 0.25 : random();
  SIGNS_OF.forEach((signs, test) => {
    if (noBooster && test === BOOSTER_ONLY) return;
    if (random() < share) for (const sign of signs) has[sign] = 1;
  });
}

function start(network: Network, random: Random): void {
  const fill = (w: Float32Array, fanIn: number) => {
    for (let i = 0; i < w.length; i++) w[i] = normal(random) * Math.sqrt(2 / fanIn);
  };
  fill(network.w1, INPUTS * 0.6);
  fill(network.w2, HIDDEN);
  fill(network.w3, HIDDEN * 4);
}

/** Adam (Kingma and Ba 2015, usual constants) over all weights. */
function adam(network: Network, grad: Network) {
  const keys = Object.keys(network) as (keyof Network)[];
  const moments = keys.map((key) => [
    new Float32Array(network[key].length),
    new Float32Array(network[key].length),
  ]);
  let step = 0;
  return (rate: number, batch: number) => {
    step++;
    const scale = rate * (Math.sqrt(1 - 0.999 ** step) / (1 - 0.9 ** step));
    keys.forEach((key, k) => {
      const [m, v] = moments[k] as [Float32Array, Float32Array];
      const w = network[key];
      const g = grad[key];
      for (let i = 0; i < w.length; i++) {
        const slope = g[i]! / batch;
        m[i] = 0.9 * m[i]! + 0.1 * slope;
        v[i] = 0.999 * v[i]! + 0.001 * slope * slope;
        w[i] = w[i]! - (scale * m[i]!) / (Math.sqrt(v[i]!) + 1e-8);
      }
      g.fill(0);
    });
  };
}

export interface TrainingPlan {
  readonly samples: number;
  readonly batch: number;
  readonly rate: number;
}

/** Trains from nothing; every sample is a case with one take of its readings and a fresh choice of tests taken. */
export function train(
  data: Dataset,
  plan: TrainingPlan,
  random: Random,
  progress: (done: number, loss: number) => void,
): Network {
  const network = emptyNetwork();
  start(network, random);
  const grad = emptyNetwork();
  const add = accumulator(network, grad);
  const update = adam(network, grad);
  const inputs = new Float32Array(INPUTS);
  const has = new Uint8Array(SIGN_IDS.length);
  let loss = 0;
  for (let n = 1; n <= plan.samples; n++) {
    const i = Math.floor(random() * data.size);
    sampleInputs(data, i, random, has, inputs);
    loss += add(inputs, data.first[i]!, data.second[i]!);
    if (n % plan.batch === 0) {
      const done = n / plan.samples;
      const warm = Math.min(1, n / (plan.batch * 300));
      update(warm * plan.rate * (0.5 * (1 + Math.cos(Math.PI * done)) + 0.005), plan.batch);
    }
    if (n % 50_000 === 0) {
      progress(n, loss / 50_000);
      loss = 0;
    }
  }
  return network;
}

export function sampleInputs(
  data: Dataset,
  i: number,
  random: Random,
  has: Uint8Array,
  inputs: Float32Array,
): void {
  const take = i * TAKES + Math.floor(random() * TAKES);
  drawMask(random, data.impossible[i] === 1, has);
  maskedInputs(
    data.context.subarray(i * CONTEXT, (i + 1) * CONTEXT),
    data.measured.subarray(take * MEASURED_COUNT, (take + 1) * MEASURED_COUNT),
    has,
    inputs,
  );
}
