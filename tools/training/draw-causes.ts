import { CAUSE_IDS, type CauseId } from "../../packages/diagnosis/src/causes.ts";
import { canMeet, OFTEN_TOGETHER } from "../../packages/diagnosis/src/pairs.ts";
import { drawIndex, type Random } from "../../packages/diagnosis/src/random.ts";
import { TRAINING_SHARES } from "../../packages/diagnosis/src/training-shares.ts";

/** One cause by the training shares, or two that can meet. */
export function drawTrainingCauses(random: Random): readonly CauseId[] {
  const one = () => CAUSE_IDS[drawIndex(random, TRAINING_SHARES)]!;
  if (random() >= 0.35) return [one()];
  return drawPair(random, one);
}

function drawPair(random: Random, one: () => CauseId): readonly CauseId[] {
  if (random() < 0.3) return OFTEN_TOGETHER[Math.floor(random() * OFTEN_TOGETHER.length)]!;
  for (;;) {
    const pair = [one(), one()] as const;
    if (canMeet(...pair)) return pair;
  }
}
