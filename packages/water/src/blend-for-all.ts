import { known, type Outcome } from "@tapside/quantities";
import type { ConservedWater } from "./analysis.ts";
import { type BlendAnswer, type BlendOptions, blendRange, type LimitOnBlend } from "./blend-range.ts";
import type { WaterLimit } from "./suits.ts";

/** What hangs on the blend behind the same further treatment, such as a remineraliser of its own. */
export interface BehindBlend {
  readonly limits: readonly WaterLimit[];
  readonly options?: BlendOptions;
}

type Range = readonly [low: number, high: number];

/**
 * One blend for all appliances of a site, each behind its own further treatment: the range that keeps every limit of every
 * one, or the limits no blend keeps and the pairs no blend keeps together.
 *
 * Source, Range, Error: as `blendRange`.
 */
export function blendForAll(
  feed: ConservedWater,
  permeate: ConservedWater,
  groups: readonly BehindBlend[],
): Outcome<BlendAnswer> {
  const answers: BlendAnswer[] = [];
  for (const { limits, options } of groups) {
    const answer = blendRange(feed, permeate, limits, options);
    if (answer.kind !== "known") return answer;
    answers.push(answer.value);
  }
  const byLimit = answers.flatMap((answer) => answer.byLimit);
  const ranges = answers.map(rangeOf);
  const whole = ranges.every((one) => one !== undefined) ? ranges.reduce(meet, [0, 1]) : undefined;
  if (whole) return known({ kind: "range", lowFeedFraction: whole[0], highFeedFraction: whole[1], byLimit });
  const inside = answers.flatMap((answer) => (answer.kind === "none" ? [answer] : []));
  return known({
    kind: "none",
    broken: inside.flatMap(({ broken }) => broken),
    conflicts: [...inside.flatMap(({ conflicts }) => conflicts), ...across(answers)],
    byLimit,
  });
}

const rangeOf = (answer: BlendAnswer): Range | undefined =>
  answer.kind === "range" ? [answer.lowFeedFraction, answer.highFeedFraction] : undefined;

function meet(a: Range | undefined, b: Range | undefined): Range | undefined {
  if (!a || !b) return undefined;
  const [low, high] = [Math.max(a[0], b[0]), Math.min(a[1], b[1])];
  return low <= high ? [low, high] : undefined;
}

/** Limits of different groups whose kept blends do not meet. */
const across = (answers: readonly BlendAnswer[]) =>
  answers.flatMap((a, i) =>
    answers
      .slice(i + 1)
      .flatMap((b) => a.byLimit.flatMap((one) => b.byLimit.flatMap((other) => apart(one, other)))),
  );

const apart = (one: LimitOnBlend, other: LimitOnBlend) =>
  one.kept && other.kept && !meet(one.kept, other.kept) ? [[one.limit, other.limit] as const] : [];
