import { brier } from "./brier.ts";
import { CAUSE_IDS, type CauseId } from "./causes.ts";
import { REPAIRS } from "./repairs.ts";
import { type Share, shareOf } from "./share-of.ts";

/** How well odds over causes matched what was simulated. */
export interface OddsScore {
  readonly cases: number;
  readonly top1: Share;
  readonly top3: Share;
  readonly sameRepair: Share;
  readonly rightWhenSure: Share;
  readonly calibrationError: number;
  readonly brier: number;
  readonly logScore: number;
  readonly recall: Readonly<Partial<Record<CauseId, Share>>>;
}

interface Judged {
  readonly truth: number;
  readonly p: Float64Array;
}

/** Scores of probabilities against what was simulated. Calibration error over ten equal bins of the first cause's probability. */
export function scoreOf(judged: readonly Judged[]): OddsScore {
  const bins = Array.from({ length: 10 }, () => ({ said: 0, right: 0 }));
  const recall = new Map<number, { hits: number; of: number }>();
  const sum = { top1: 0, top3: 0, repair: 0, sure: 0, sureRight: 0, brier: 0, log: 0 };
  for (const { truth, p } of judged) {
    const order = [...p.keys()].sort((a, b) => p[b]! - p[a]!);
    const first = order[0]!;
    const right = Number(first === truth);
    sum.top1 += right;
    sum.top3 += Number(order.slice(0, 3).includes(truth));
    sum.repair += Number(sameRepair(CAUSE_IDS[first]!, CAUSE_IDS[truth]!));
    sum.sure += Number(p[first]! >= 0.9);
    sum.sureRight += p[first]! >= 0.9 ? right : 0;
    sum.brier += brier(p, truth);
    sum.log -= Math.log(Math.max(1e-12, p[truth]!));
    const bin = bins[Math.min(9, Math.floor(p[first]! * 10))]!;
    bin.said += p[first]!;
    bin.right += right;
    const own = recall.get(truth) ?? { hits: 0, of: 0 };
    recall.set(truth, { hits: own.hits + right, of: own.of + 1 });
  }
  const n = judged.length;
  return {
    cases: n,
    top1: shareOf(sum.top1, n),
    top3: shareOf(sum.top3, n),
    sameRepair: shareOf(sum.repair, n),
    rightWhenSure: shareOf(sum.sureRight, sum.sure),
    calibrationError: bins.reduce((total, { said, right }) => total + Math.abs(said - right), 0) / n,
    brier: sum.brier / n,
    logScore: sum.log / n,
    recall: Object.fromEntries([...recall].map(([i, { hits, of }]) => [CAUSE_IDS[i], shareOf(hits, of)])),
  };
}

/** Two causes are put right alike when they take the same parts, and take some. */
function sameRepair(a: CauseId, b: CauseId): boolean {
  const parts = REPAIRS[a].parts.join();
  return a === b || (parts !== "" && parts === REPAIRS[b].parts.join());
}
