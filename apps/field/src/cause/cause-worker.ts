import {
  assumedWith,
  checkFit,
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

/** Weighs away from the screen, so that it never stops following the finger. */
self.addEventListener("message", async ({ data }: MessageEvent<CauseAsked>) => {
  const engine = await loadEngine();
  if (data.kind === "planner") {
    tell({ kind: "planned", key: data.key, run: plannerOn(data.practice, engine) });
    return;
  }
  const { key, scene, readings, hour } = data;
  const assumed = assumedWith(data.counts);
  const near = bankOf(scene);
  tell({ kind: "diagnosed", key, diagnosis: diagnose(engine, near, readings, hour, assumed) });
  const fit = checkFit(scene, posterior(engine, near.expected, readings, assumed), readings);
  tell({ kind: "fit", key, unexplained: fit.unexplained, sizes: fittedCauses(scene, fit, readings) });
});
