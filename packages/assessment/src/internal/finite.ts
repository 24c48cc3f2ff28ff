import { type Outcome, refused, type Uncertain } from "@tapside/quantities";

/** Lets a figure through only when its value and uncertainty are finite numbers. */
export function finite<T extends Uncertain>(outcome: Outcome<T>, code = "not-computable"): Outcome<T> {
  if (outcome.kind !== "known") return outcome;
  const { value, u } = outcome.value;
  return Number.isFinite(value) && Number.isFinite(u) ? outcome : refused(code);
}
