import { answersOf, type VisitOfUnit } from "./answers-of.ts";
import { SEARCH } from "./search-answers.ts";
import { SET_UPS, type SetUpId, TESTS, type Test, type Tool } from "./test-catalogue.ts";

export const SET_UP_IDS = Object.keys(SET_UPS) as readonly SetUpId[];

/** Tools some test asks for. */
export const TOOLS: readonly Tool[] = [
  ...new Set(Object.values(TESTS).flatMap((test: Test) => (test.tool ? [test.tool] : []))),
];

const listed = (said: unknown): readonly unknown[] => (Array.isArray(said) ? said : []);

/** What makes a test cheap, dear or impossible here and now, as it was said at the visit. */
export function hourOf(one: VisitOfUnit) {
  const answers = answersOf(one);
  const missing = listed(answers[SEARCH.toolsMissing]);
  const made = listed(answers[SEARCH.setUps]);
  return {
    kitchenBusy: answers[SEARCH.kitchenBusy] === true,
    tools: TOOLS.filter((tool) => !missing.includes(tool)),
    setUps: SET_UP_IDS.filter((id) => made.includes(id)),
  };
}
