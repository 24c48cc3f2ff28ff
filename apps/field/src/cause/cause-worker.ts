import {
  advise,
  checkFit,
  type DonorBank,
  donorBank,
  type Engine,
  evidenceFor,
  loadEngine,
  meaningsOf,
  plannerOn,
  posterior,
  type Scene,
} from "@tapside/diagnosis";
import type { CauseAsked, CauseTold, Diagnosis } from "./worker-asks.ts";

/** Causes worth a band. */
const SHOWN = 5;
const WORTH_SHOWING = 0.02;
let bankKey = "";
let bank: DonorBank | undefined;

/** Simulated visits to one unit serve all its questions. */
function bankOf(scene: Scene): DonorBank {
  const key = JSON.stringify(scene);
  if (!bank || key !== bankKey) bank = donorBank(scene);
  bankKey = key;
  return bank;
}

function diagnose(engine: Engine, asked: Extract<CauseAsked, { kind: "diagnose" }>): Diagnosis {
  const { scene, readings, setUps, notAgain } = asked;
  const near = bankOf(scene);
  const advice = advise(engine, near, readings, { setUps, notAgain });
  const { step } = advice;
  return {
    causes: advice.odds.causes
      .filter(({ probability }, at) => at === 0 || probability >= WORTH_SHOWING)
      .slice(0, SHOWN)
      .map((one) => ({ ...one, evidence: evidenceFor(one.cause, engine, near.expected, readings) })),
    two: advice.odds.two,
    step,
    meanings: step.kind === "test" ? meaningsOf(step.proposal.test, engine, near, readings) : [],
    tests: advice.tests,
    plan: advice.plan,
  };
}

const tell = (told: CauseTold) => self.postMessage(told);

/** Weighs away from the screen, so that it never stops following the finger. */
self.addEventListener("message", async ({ data }: MessageEvent<CauseAsked>) => {
  const engine = await loadEngine();
  if (data.kind === "planner") {
    tell({ kind: "planned", key: data.key, run: plannerOn(data.practice, engine) });
    return;
  }
  tell({ kind: "diagnosed", key: data.key, diagnosis: diagnose(engine, data) });
  const { scene, readings } = data;
  const result = posterior(engine, bankOf(scene).expected, readings);
  tell({ kind: "fit", key: data.key, unexplained: checkFit(scene, result, readings).unexplained });
});
