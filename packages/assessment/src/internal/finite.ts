import { type Outcome, refused, type Uncertain } from "@tapside/quantities";

/** Lets a figure through only when its value and uncertainty are finite numbers. */
export function finite<T extends Uncertain>(outcome: Outcome<T>, code = "not-computable"): Outcome<T> {
  if (outcome.kind !== "known") return outcome;
  const { value, u } = outcome.value;
  return Number.isFinite(value) && Number.isFinite(u) ? outcome : refused(code);
}

/** A refusal without the numbers that are none: absurd readings are named by the code, not by what came of them. */
export function finiteRefusal<T>(outcome: Outcome<T>): Outcome<T> {
  if (outcome.kind !== "refused") return outcome;
  const plain = Object.entries(outcome.detail).filter(
    ([, one]) => typeof one !== "number" || Number.isFinite(one),
  );
  return refused(outcome.code, Object.fromEntries(plain));
}
