import { canonicalJson, sha256Hex } from "@tapside/records";
import { expect, it } from "vitest";
import { assess } from "./assess.ts";
import type { Assessment } from "./assessment.ts";
import { RULES_VERSION } from "./rules-version.ts";
import { context } from "./testing/build.ts";
import { drainAllNight, ordinaryVisit, tasteComplaint } from "./testing/trials.ts";

/** What was decided, without the last digits of the numbers it was decided by. */
const decided = ({ findings, questions, tasks, due }: Assessment) => ({
  findings: findings.map(({ id, phase, verdict, rule, action }) =>
    [id, phase, verdict, rule, action].map(String),
  ),
  questions: questions.map(({ id }) => id),
  tasks: tasks.map(({ id, why }) => [id, why]),
  due: due.map(({ role, byDate, overdue }) => [role, byDate, overdue]),
});

it("the same visits are decided as this number of the rules decides them; when not, raise RULES_VERSION", () => {
  const judged = [ordinaryVisit(), tasteComplaint(), drainAllNight()].map((file) =>
    decided(assess(file, "today", context)),
  );
  expect({
    rules: RULES_VERSION,
    mark: sha256Hex(canonicalJson(judged)).slice(0, 16),
  }).toMatchInlineSnapshot(`
    {
      "mark": "4c99de8ae3f0ee7a",
      "rules": 10,
    }
  `);
});
