import { SET_UPS, type SetUpId, TESTS, type Test, type Tool } from "@tapside/diagnosis";
import type { OpenVisit } from "../visit/use-visit.ts";
import { answersOf } from "./visit-case.ts";

/** Fields of the visit's answers that hold what makes a test cheap, dear or impossible here and now. */
export const HOUR = {
  busy: "answer:cause.kitchenBusy",
  missing: "answer:cause.toolsMissing",
  made: "answer:cause.setUps",
} as const;

export const SET_UP_IDS = Object.keys(SET_UPS) as readonly SetUpId[];

export const TOOLS: readonly Tool[] = [
  ...new Set(Object.values(TESTS).flatMap((test: Test) => (test.tool ? [test.tool] : []))),
];

const listed = (said: unknown): readonly unknown[] => (Array.isArray(said) ? said : []);

/** The state of the hour as it was said at this visit. */
export function hourOf(open: OpenVisit) {
  const answers = answersOf(open);
  const missing = listed(answers["cause.toolsMissing"]);
  const made = listed(answers["cause.setUps"]);
  return {
    kitchenBusy: answers["cause.kitchenBusy"] === true,
    tools: TOOLS.filter((tool) => !missing.includes(tool)),
    setUps: SET_UP_IDS.filter((id) => made.includes(id)),
  };
}
