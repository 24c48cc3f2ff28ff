import { freeze, verifyRecord } from "@tapside/records";
import { describe, expect, it } from "vitest";
import type { RecordContent } from "./block.ts";
import { judgeAgain } from "./judge-again.ts";
import { DEMO_UNITS, demoRecord, withLastVisit } from "./test-support/demo-record.ts";

/** As it lies in a file: frozen, written out and read back. */
function asKept(content: RecordContent): RecordContent {
  const kept = verifyRecord(freeze(content));
  if (kept.kind !== "known") throw new Error("the record does not verify");
  return kept.value as unknown as RecordContent;
}

const again = (content: RecordContent) => {
  const outcome = judgeAgain(content);
  if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
  return outcome.value;
};

describe("a frozen record judged once more from the inputs it keeps", () => {
  it.each(DEMO_UNITS)("of unit %i comes to the same judgement", (n) => {
    const { differs, rulesThen, rulesNow } = again(asKept(demoRecord(n)));
    expect(differs).toEqual([]);
    expect(rulesThen).toBe(rulesNow);
  });

  it("names the finding and the figure that somebody wrote otherwise, though the mark was made anew", () => {
    const kept = asKept(demoRecord(1));
    const forged = JSON.parse(
      JSON.stringify(kept).replace('"id":"percentReduction"', '"id":"percentReductiom"'),
    ) as RecordContent;
    expect(verifyRecord(freeze(forged)).kind).toBe("known");
    expect(again(forged).differs).toEqual([
      "findings percentReductiom asFound",
      "findings percentReduction asFound",
    ]);
  });

  it("names what follows from a reading that was altered in the inputs alone", () => {
    const kept = asKept(demoRecord(1));
    const altered = demoRecord(1, (file) =>
      withLastVisit(file, (visit) => ({
        ...visit,
        readings: {
          ...visit.readings,
          asFound: {
            ...visit.readings.asFound,
            permeateTds: { ...visit.readings.asFound.permeateTds!, value: 99, raw: "99" },
          },
        },
      })),
    );
    const { differs } = again({ ...kept, inputs: altered.inputs } as RecordContent);
    expect(differs).toContain("figures asFound percentReduction");
    expect(differs).not.toContain("figures asFound airCharge");
  });

  it("says that a record of the first kind kept no inputs", () => {
    const { inputs: _, ...first } = demoRecord(1);
    expect(judgeAgain(first)).toEqual({ kind: "missing", missing: ["inputs"] });
  });

  it("tells which rules it was judged by when they had no number yet", () => {
    const { rules: _, ...before } = demoRecord(2);
    expect(again(before).rulesThen).toBeUndefined();
  });
});
