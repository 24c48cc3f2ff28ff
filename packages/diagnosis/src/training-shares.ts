import { CAUSE_IDS, CAUSES } from "./causes.ts";

/**
 * How often the network saw each cause while it was trained: flatter than the weights, so that rare causes are learnt too. Odds divide
 * it out again.
 */
export const TRAINING_SHARES: readonly number[] = CAUSE_IDS.map((id) => (CAUSES[id].weight + 2) ** 0.6);

/** Share of training cases with two causes, and of visits as one expects them. */
export const TWO_CAUSES = { trained: 0.35, expected: 0.12 } as const;
