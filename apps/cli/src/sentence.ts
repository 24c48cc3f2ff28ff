import type { Outcome } from "@tapside/quantities";

/** Why there is no answer, in one sentence a person can act on. */
export function sentence(outcome: Exclude<Outcome<never>, { kind: "known" }>): string {
  if (outcome.kind === "missing") return `cannot tell, because ${outcome.missing.join(", ")} is missing`;
  const words = outcome.code.replaceAll("-", " ");
  const detail = Object.entries(outcome.detail).map(([name, value]) => `${name} ${value}`);
  return detail.length > 0 ? `${words} (${detail.join(", ")})` : words;
}
