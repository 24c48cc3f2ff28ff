import { expect, it } from "vitest";
import { allReadings } from "./drawn-case.ts";
import { fitCauses } from "./fit-cause.ts";
import { soundHidden } from "./hidden.ts";
import { solveSymmetric } from "./internal/solve-symmetric.ts";
import { withCauses } from "./population.ts";
import { seededRandom } from "./random.ts";
import { simulateCase } from "./simulate-case.ts";
import { trueValues } from "./true-values.ts";

it("solves 4x + 2y = 10, 2x + 3y = 9 (by hand: 1.5, 2)", () => {
  const [x, y] = solveSymmetric(
    [
      [4, 2],
      [2, 3],
    ],
    [10, 9],
  );
  expect(x).toBeCloseTo(1.5, 12);
  expect(y).toBeCloseTo(2, 12);
});

it("the size of a fault is found again from readings without scatter", () => {
  const { scene } = simulateCase(["healthy"], seededRandom(21));
  for (const share of [0.3, 0.7]) {
    const truth = trueValues(withCauses(soundHidden(scene), ["fouledMembrane"], () => share));
    const {
      temperature,
      feedTds,
      permeateFlow,
      permeateTds,
      drainFlow,
      beforeFilterPressure,
      afterFilterPressure,
    } = truth;
    const readings = {
      temperature,
      feedTds,
      permeateFlow,
      permeateTds,
      drainFlow,
      beforeFilterPressure,
      afterFilterPressure,
    };
    const fit = fitCauses(scene, ["fouledMembrane"], readings);
    expect(Math.abs(fit.shares[0]! - share)).toBeLessThan(0.12);
    expect(fit.misfit).toBeLessThan(2);
  }
});

it("the cause at work fits its own readings better than soundness does", () => {
  for (const cause of ["restrictorBlocked", "postFilterClogged", "checkValveFailed"] as const) {
    const one = simulateCase([cause], seededRandom(33));
    const own = fitCauses(one.scene, [cause], allReadings(one));
    const sound = fitCauses(one.scene, ["healthy"], allReadings(one));
    expect(own.misfit).toBeLessThan(sound.misfit);
  }
});
