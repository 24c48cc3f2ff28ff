import { beforeAll, describe, expect, it } from "vitest";
import { advise } from "./advise.ts";
import { caseFromFile } from "./case-from-file.ts";
import { donorBank } from "./donors.ts";
import { type Engine, loadEngine } from "./engine.ts";
import { odds } from "./odds.ts";
import type { Readings } from "./signs.ts";
import { drainAllNight, ordinaryVisit, tasteComplaint } from "./testing/trials.ts";

/**
 * Worked visits computed with an independent implementation of the same physics (the truth of each stands beside it in the trials);
 * none of their numbers comes from this package.
 */
let engine: Engine;
beforeAll(async () => {
  engine = await loadEngine();
});

const caseOf = (file: ReturnType<typeof ordinaryVisit>) => {
  const found = caseFromFile(file, "today");
  if (found.kind !== "known") throw new Error(JSON.stringify(found));
  return found.value;
};

/** Entered from the last sign to the first: looks and odd flows before any pressure. */
const backwards = (readings: Readings): Readings => Object.fromEntries(Object.entries(readings).reverse());

const adviceOn = (file: ReturnType<typeof ordinaryVisit>) => {
  const { scene, readings } = caseOf(file);
  return advise(engine, donorBank(scene), backwards(readings));
};

describe("worked visits, entered backwards", () => {
  it("an ordinary visit: the cartridge first, then the charge; the element stays", () => {
    const { odds: found, plan } = adviceOn(ordinaryVisit());
    expect(
      found.causes
        .slice(0, 2)
        .map(({ cause }) => cause)
        .sort(),
    ).toEqual(["airChargeLow", "preFilterClogged"]);
    expect(plan.parts).toContain("preFilter");
    expect(plan.parts).not.toContain("element");
  });

  it("a taste complaint: oxidised behind spent carbon; the carbon is put right first", () => {
    const { odds: found, plan } = adviceOn(tasteComplaint());
    expect(
      found.causes
        .slice(0, 2)
        .map(({ cause }) => cause)
        .sort(),
    ).toEqual(["carbonExhausted", "oxidisedMembrane"]);
    expect(plan.steps[0]?.cause).toBe("carbonExhausted");
    expect(plan.steps[1]?.first).toContain("carbonExhausted");
    expect(plan.parts).not.toContain("oRing");
  });

  it("a drain heard all night: the check valve, not the shut-off", () => {
    const { odds: found, plan } = adviceOn(drainAllNight());
    expect(found.causes[0]?.cause).toBe("checkValveFailed");
    expect(plan.steps[0]?.cause).toBe("checkValveFailed");
    expect(plan.parts).not.toContain("shutOffValve");
    expect(found.causes.find(({ cause }) => cause === "shutOffStuckOpen")?.probability).toBeLessThan(0.02);
  });

  it("the order of entry changes no odds by more than 0.005", () => {
    for (const file of [ordinaryVisit(), tasteComplaint(), drainAllNight()]) {
      const { scene, readings } = caseOf(file);
      const { expected } = donorBank(scene);
      const [one, other] = [odds(engine, expected, readings), odds(engine, expected, backwards(readings))];
      for (const { cause, probability } of one.causes) {
        const again = other.causes.find((entry) => entry.cause === cause)!.probability;
        expect(Math.abs(again - probability)).toBeLessThan(0.005);
      }
    }
  });
});
