import { advise } from "./advise.ts";
import { APPLY } from "./apply-cause.ts";
import { CAUSE_IDS, CAUSES, type CauseId } from "./causes.ts";
import { type DonorBank, donorBank } from "./donors.ts";
import type { Engine } from "./engine.ts";
import type { Hidden } from "./hidden.ts";
import { measuredAgain } from "./measured-again.ts";
import { minutesOf } from "./next-test.ts";
import { canMeet } from "./pairs.ts";
import { drawPlaceFor } from "./population.ts";
import { drawIndex, type Random, seededRandom } from "./random.ts";
import { REPAIRS } from "./repairs.ts";
import type { Scene } from "./scene.ts";
import { sceneAfterRepairs } from "./scene-after-repairs.ts";
import { type Readings, SIGNS, type SignId } from "./signs.ts";
import { scatteredReadings } from "./simulate-case.ts";
import { type SetUpId, TESTS, type Test, type TestId } from "./test-catalogue.ts";
import { trueValues } from "./true-values.ts";

/** "easy": one severe fault; "usual": one of any size; "hard": two. */
export type Difficulty = "easy" | "usual" | "hard";

/** A simulated unit with hidden faults, as it stands after what was done to it. A value: every action gives a new one. */
export interface Practice {
  readonly seed: number;
  readonly scene: Scene;
  /** What is at work; for the end of the exercise, not before. */
  readonly causes: readonly CauseId[];
  readonly sound: Hidden;
  readonly sizes: readonly number[];
  readonly readings: Readings;
  readonly setUps: readonly SetUpId[];
  readonly minutes: number;
  readonly log: readonly PracticeEntry[];
}

export type PracticeEntry =
  | { readonly kind: "test"; readonly test: TestId; readonly minutes: number; readonly shown: Readings }
  | { readonly kind: "repair"; readonly cause: CauseId; readonly minutes: number; readonly helped: boolean };

const weights = CAUSE_IDS.map((id) => (id === "healthy" ? 0 : CAUSES[id].weight));

function hiddenCauses(difficulty: Difficulty, random: Random): readonly CauseId[] {
  const one = CAUSE_IDS[drawIndex(random, weights)]!;
  if (difficulty !== "hard") return [one];
  for (;;) {
    const other = CAUSE_IDS[drawIndex(random, weights)]!;
    if (canMeet(one, other)) return [one, other];
    if (one === "tubingReversed") return [one];
  }
}

/** A unit to practise on; the same seed and difficulty give the same unit. */
export function practiceUnit(seed: number, difficulty: Difficulty): Practice {
  const random = seededRandom(seed);
  const causes = hiddenCauses(difficulty, random);
  const { scene, hidden } = drawPlaceFor(causes, random);
  const sizes = causes.map(() => (difficulty === "easy" ? 0.6 + 0.4 * random() : 0.15 + 0.7 * random()));
  return { seed, scene, causes, sound: hidden, sizes, readings: {}, setUps: [], minutes: 0, log: [] };
}

const truthOf = (practice: Practice): Hidden =>
  practice.causes.reduce(
    (hidden, cause, i) => APPLY[cause](hidden, practice.sizes[i]!, seededRandom(practice.seed + 7)),
    practice.sound,
  );

/** Takes a test: its minutes pass, its signs are read with their scatter. Read twice, it shows two slightly different numbers. */
export function takeTest(practice: Practice, test: TestId): Practice {
  const { setUp, signs }: Test = TESTS[test];
  const random = seededRandom(practice.seed * 131 + practice.log.length + 1);
  const all = scatteredReadings(trueValues(truthOf(practice)), random);
  const shown = Object.fromEntries(signs.map((sign: SignId) => [sign, shownAs(sign, all[sign])]));
  const minutes = minutesOf(test, { setUps: practice.setUps });
  return {
    ...practice,
    readings: { ...practice.readings, ...shown },
    setUps: setUp && !practice.setUps.includes(setUp) ? [...practice.setUps, setUp] : practice.setUps,
    minutes: practice.minutes + minutes,
    log: [...practice.log, { kind: "test", test, minutes, shown }],
  };
}

/** As a meter shows it. */
const shownAs = (sign: SignId, value: number): number =>
  SIGNS[sign].kind === "look" ? value : Number(value.toPrecision(3));

/** Repairs a cause: its minutes pass, and if it was at work it no longer is. What was read of the unit before is no longer true. */
export function repairInPractice(practice: Practice, cause: CauseId): Practice {
  const at = practice.causes.indexOf(cause);
  const { minutes } = REPAIRS[cause];
  return {
    ...practice,
    causes: practice.causes.filter((one) => one !== cause),
    sizes: practice.sizes.filter((_, i) => i !== at),
    scene: sceneAfterRepairs(practice.scene, [cause]),
    readings: measuredAgain(practice.readings, [cause], {}),
    minutes: practice.minutes + minutes,
    log: [...practice.log, { kind: "repair", cause, minutes, helped: at >= 0 }],
  };
}

const MOST_STEPS = 40;

/** What the planner would have done with the same unit from the start: its log, until it calls the unit sound or cannot tell. */
export function plannerOn(practice: Practice, engine: Engine): Practice {
  let run: Practice = practice;
  let bank: DonorBank = donorBank(run.scene);
  for (let step = 0; step < MOST_STEPS; step++) {
    const done = run.log.flatMap((entry) => (entry.kind === "test" ? [entry.test] : []));
    const notAgain = done.filter((test) =>
      TESTS[test].signs.every((sign) => run.readings[sign] !== undefined),
    );
    const { step: next } = advise(engine, bank, run.readings, { setUps: run.setUps, notAgain });
    if (next.kind === "test") run = takeTest(run, next.proposal.test);
    else if (next.kind === "repair") {
      run = repairInPractice(run, next.cause);
      bank = donorBank({ ...run.scene, complaint: "routine" });
    } else return run;
    if (run.causes.length === 0) return run;
  }
  return run;
}
