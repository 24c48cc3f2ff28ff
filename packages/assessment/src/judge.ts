import { decide, type Outcome } from "@tapside/quantities";
import type { Phase } from "@tapside/records";
import type { Figure, Finding } from "./assessment.ts";
import { finite, finiteRefusal } from "./internal/finite.ts";

type Extra = Pick<Finding, "action" | "detail">;

/** One figure against one limit by the guard-band rule; without the figure, which reading would tell. */
export function judge(
  id: string,
  phase: Phase,
  given: Outcome<Figure>,
  limit: NonNullable<Finding["limit"]>,
  consequence: number,
  extra: Extra = {},
): Finding {
  const figure = finiteRefusal(finite(given));
  if (figure.kind !== "known") return { ...cannotTell(id, phase, figure, consequence), limit };
  const decision = decide(figure.value, limit);
  const { action, ...rest } = extra;
  return {
    id,
    phase,
    ...decision,
    figure: figure.value,
    limit,
    consequence:
      consequence * (decision.verdict === "outside" ? 1 : decision.verdict === "tooClose" ? 0.6 : 0.1),
    ...rest,
    ...(action !== undefined && decision.verdict === "outside" && { action }),
  };
}

export function cannotTell(
  id: string,
  phase: Phase,
  outcome: Exclude<Outcome<unknown>, { kind: "known" }>,
  consequence: number,
): Finding {
  const base = { id, phase, verdict: "cannotTell", consequence: 0.3 * consequence } as const;
  if (outcome.kind === "missing") return { ...base, missing: outcome.missing };
  return { ...base, detail: { ...outcome.detail, code: outcome.code } };
}
