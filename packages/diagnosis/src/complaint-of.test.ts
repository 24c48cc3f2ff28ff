import type { KeptVisit } from "@tapside/records";
import { expect, test } from "vitest";
import { complaintOf } from "./complaint-of.ts";
import { SEARCH } from "./search-answers.ts";

const of = (kind: string, items: readonly string[] | undefined, said?: string) =>
  complaintOf({
    kind,
    answers: { ...(items && { complaint: { items } }), ...(said && { [SEARCH.complaint]: said }) },
  } as unknown as KeptVisit);

test("what was said in the search goes before what was ticked", () => {
  expect(of("callOut", ["drainRuns"], "taste")).toBe("taste");
  expect(of("annual", undefined, "runsOut")).toBe("runsOut");
});

test("what was ticked counts where it comes down to one complaint", () => {
  expect(of("callOut", ["weak", "noWater"])).toBe("runsOut");
  expect(of("callOut", ["drainRuns", "noise"])).toBe("drainRuns");
  expect(of("quality", ["smellChlorine", "ice"])).toBe("taste");
  expect(of("callOut", ["taste", "drainRuns"])).toBeUndefined();
});

test("a visit nobody called for is routine; a call without words is not known", () => {
  expect(of("annual", undefined)).toBe("routine");
  expect(of("callOut", [])).toBeUndefined();
  expect(of("callOut", ["noise"])).toBeUndefined();
});
