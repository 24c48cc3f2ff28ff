import {
  type Assumed,
  advise,
  type CompanyCounts,
  checkFit,
  type DonorBank,
  donorBank,
  type Engine,
  evidenceFor,
  type FitCheck,
  frequencies,
  loadEngine,
  meaningsOf,
  plannerOn,
  posterior,
  type Readings,
  type Scene,
  SIGN_IDS,
  sizeOfCause,
  slotToRead,
  usualAssumed,
} from "@tapside/diagnosis";
import type { CauseAsked, CauseTold, Diagnosis, FittedSizes } from "./worker-asks.ts";

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

const assumedWith = (counts: CompanyCounts | undefined): Assumed =>
  counts ? { ...usualAssumed, frequencies: frequencies(counts) } : usualAssumed;

function diagnose(engine: Engine, asked: Extract<CauseAsked, { kind: "diagnose" }>): Diagnosis {
  const { scene, readings, setUps, notAgain, kitchenBusy, tools, counts } = asked;
  const assumed = assumedWith(counts);
  const near = bankOf(scene);
  const advice = advise(
    engine,
    near,
    readings,
    { setUps, notAgain, kitchenBusy, ...(tools && { tools }) },
    assumed,
  );
  const { step } = advice;
  const likely = advice.odds.causes
    .filter(({ probability }, at) => at === 0 || probability >= WORTH_SHOWING)
    .slice(0, SHOWN);
  const evidence = evidenceFor(
    likely.map(({ cause }) => cause),
    engine,
    near.expected,
    readings,
    assumed,
  );
  return {
    causes: likely.map((one, i) => ({ ...one, evidence: evidence[i] ?? [] })),
    two: advice.odds.two,
    step,
    meanings: step.kind === "test" ? meaningsOf(step.proposal.test, engine, near, readings, assumed) : [],
    tests: advice.tests,
    plan: advice.plan,
  };
}

/** Of every fitted cause, from its best fit: how large, and what it would read beside what was read. */
function sizesOf(scene: Scene, { fits }: FitCheck, readings: Readings): FittedSizes {
  const sizes: { -readonly [K in keyof FittedSizes]: FittedSizes[K] } = {};
  for (const fit of fits)
    for (const cause of fit.causes)
      sizes[cause] ??= {
        size: sizeOfCause(cause, fit, scene),
        beside: SIGN_IDS.flatMap((sign) => {
          const read = readings[sign];
          return read === undefined && !slotToRead(sign)
            ? []
            : [{ sign, read, wouldRead: fit.wouldRead[sign] }];
        }),
      };
  return sizes;
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
  const result = posterior(engine, bankOf(scene).expected, readings, assumedWith(data.counts));
  const fit = checkFit(scene, result, readings);
  tell({ kind: "fit", key: data.key, unexplained: fit.unexplained, sizes: sizesOf(scene, fit, readings) });
});
