import { beforeAll, describe, expect, it } from "vitest";
import { advise } from "./advise.ts";
import { caseFromFile } from "./case-from-file.ts";
import { donorBank } from "./donors.ts";
import { type Engine, loadEngine } from "./engine.ts";
import { odds } from "./odds.ts";
import type { Readings } from "./signs.ts";
import {
  drainAllNight,
  drainTooStrong,
  everythingSaltier,
  hardAgain,
  ordinaryVisit,
  runsOutAtOnce,
  tasteComplaint,
} from "./testing/trials.ts";

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
  it("an ordinary visit: the cartridge and the charge, nothing else; the element stays", () => {
    const { odds: found, plan } = adviceOn(ordinaryVisit());
    expect(
      found.causes
        .slice(0, 2)
        .map(({ cause }) => cause)
        .sort(),
    ).toEqual(["airChargeLow", "preFilterClogged"]);
    expect(plan.steps.map(({ cause }) => cause).sort()).toEqual(["airChargeLow", "preFilterClogged"]);
    expect(plan.parts).toContain("preFilter");
    expect(plan.parts).not.toContain("element");
  });

  it("a taste complaint: oxidised behind spent carbon; the carbon is put right first", () => {
    const { odds: found, plan, step } = adviceOn(tasteComplaint());
    expect(
      found.causes
        .slice(0, 2)
        .map(({ cause }) => cause)
        .sort(),
    ).toEqual(["carbonExhausted", "oxidisedMembrane"]);
    expect(step).toMatchObject({ kind: "repair", cause: "carbonExhausted" });
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

  it("a drain three times too strong, no gauge behind the filters: the restrictor, not the element", () => {
    const { step, plan } = adviceOn(drainTooStrong());
    expect(step).toMatchObject({ kind: "repair", cause: "restrictorTooBig" });
    expect(plan.parts).toEqual(["restrictor"]);
  });

  it("two litres and the gauge is down: the bladder, once the tank valve was looked at", () => {
    const { odds: found, step, plan } = adviceOn(runsOutAtOnce());
    expect(found.causes[0]?.cause).toBe("diaphragmRuptured");
    expect(step).toMatchObject({ kind: "test", proposal: { test: "lookAtTankValve" } });
    expect(plan.parts).toEqual(["tank"]);
  });

  it("every water reads 1.41 times as much: a look at the meter's scale is asked for, and settles it", () => {
    const { step, plan } = adviceOn(everythingSaltier());
    expect(step).toMatchObject({ kind: "test", proposal: { test: "lookAtMeterScale" } });
    expect(plan.parts).not.toContain("element");
    const looked = adviceOn(everythingSaltier({ "cause.meterScaleWrong": 1 }));
    expect(looked.step).toMatchObject({ kind: "repair", cause: "meterScaleSlip" });
    const notIt = adviceOn(everythingSaltier({ "cause.meterScaleWrong": 0 }));
    expect(notIt.step).toMatchObject({ kind: "test", proposal: { test: "tdsStandard" } });
  });

  it("hard water behind a softener: the softener; the element stays", () => {
    const { step, plan } = adviceOn(hardAgain());
    expect(step).toMatchObject({ kind: "repair", cause: "softenerFailed" });
    expect(plan.parts).not.toContain("element");
  });

  it("the order of entry changes no odds by more than 0.005", () => {
    for (const file of [
      ordinaryVisit(),
      tasteComplaint(),
      drainAllNight(),
      drainTooStrong(),
      runsOutAtOnce(),
      everythingSaltier(),
      hardAgain(),
    ]) {
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
