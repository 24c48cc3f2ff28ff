import {
  assumedWith,
  checkFitInSlices,
  type DonorBank,
  diagnose,
  donorBank,
  fittedCauses,
  loadEngine,
  plannerOn,
  posterior,
  type Scene,
} from "@tapside/diagnosis";
import type { CauseAsked, CauseTold } from "./worker-asks.ts";

let bankKey = "";
let bank: DonorBank | undefined;

/** Simulated visits to one unit serve all its questions. */
function bankOf(scene: Scene): DonorBank {
  const key = JSON.stringify(scene);
  if (!bank || key !== bankKey) bank = donorBank(scene);
  bankKey = key;
  return bank;
}

const tell = (told: CauseTold) => self.postMessage(told);

/** The question that counts: the check of an older one is dropped. */
let newest = "";

const LONGEST_SLICE_MS = 8;

/** After this turn every message that came meanwhile has been heard. */
const turn = () =>
  new Promise<void>((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(undefined);
  });

/** Runs the check in slices, so that a newer question never waits for it. Undefined: there was one. */
async function checked<T>(work: Generator<void, T>, key: string): Promise<T | undefined> {
  let since = performance.now();
  for (let step = work.next(); ; step = work.next()) {
    if (step.done) return step.value;
    if (performance.now() - since < LONGEST_SLICE_MS) continue;
    await turn();
    if (newest !== key) return undefined;
    since = performance.now();
  }
}

/** Weighs away from the screen, so that it never stops following the finger. */
self.addEventListener("message", async ({ data }: MessageEvent<CauseAsked>) => {
  newest = data.key;
  const engine = await loadEngine();
  if (data.kind === "planner") {
    tell({ kind: "planned", key: data.key, run: plannerOn(data.practice, engine) });
    return;
  }
  const { key, scene, readings, hour } = data;
  const assumed = assumedWith(data.counts);
  const near = bankOf(scene);
  tell({ kind: "diagnosed", key, diagnosis: diagnose(engine, near, readings, hour, assumed) });
  const result = posterior(engine, near.expected, readings, assumed);
  const fit = await checked(checkFitInSlices(scene, result, readings, assumed), key);
  if (fit)
    tell({ kind: "fit", key, unexplained: fit.unexplained, sizes: fittedCauses(scene, fit, readings) });
});
