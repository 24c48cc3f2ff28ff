import { describe, expect, it } from "vitest";
import { analysisQuality, chargeImbalancePercent } from "./analysis-quality.ts";

/** Case O24 of `reference/water-cases/open.csv`: charge imbalance +3.0 % on purpose; O06: −0.001 %, 838.2 µS/cm. */
const O24 = {
  temperatureC: 25,
  pH: 7.5,
  alkalinityMgPerLCaCO3: 484,
  ions: { Ca: 219.98, Mg: 55.7, Na: 0.46, K: 6.99, Cl: 85.89, SO4: 101.24, NO3: 37.6, F: 0.624, SiO2: 34.35 },
};
const O06 = {
  temperatureC: 25,
  pH: 7.26,
  alkalinityMgPerLCaCO3: 310.7,
  ions: {
    Ca: 103.43,
    Mg: 24.48,
    Na: 41.95,
    K: 3.87,
    Cl: 49.16,
    SO4: 57.07,
    NO3: 18.38,
    F: 0.376,
    SiO2: 12.34,
  },
};

describe("analysis quality", () => {
  it("finds the imbalance of the reference cases", () => {
    expect(chargeImbalancePercent(O24)).toBeCloseTo(3.0, 1);
    expect(chargeImbalancePercent(O06)).toBeCloseTo(-0.001, 2);
  });
  it("agrees with the reference conductivity and suspects nothing", () => {
    const outcome = analysisQuality(O06, 838.2);
    expect(outcome.kind === "known" && outcome.value.conductivityRatio).toBeCloseTo(1, 2);
    expect(outcome.kind === "known" && outcome.value.suspicions).toEqual([]);
  });
  it("suspects calcium given as CaCO3", () => {
    const outcome = analysisQuality({ ...O06, ions: { ...O06.ions, Ca: 103.43 * 2.497 } });
    expect(outcome.kind === "known" && outcome.value.suspicions).toContain("calcium-given-as-CaCO3");
  });
  /** 100.09 mg of CaCO3 hold 40.08 mg of calcium and stand for 24.312 mg of magnesium. */
  it("suspects both ions of hardness given as CaCO3", () => {
    const asCaCO3 = { Ca: (O06.ions.Ca * 100.09) / 40.08, Mg: (O06.ions.Mg * 100.09) / 24.312 };
    const outcome = analysisQuality({ ...O06, ions: { ...O06.ions, ...asCaCO3 } });
    expect(outcome.kind === "known" && outcome.value.suspicions[0]).toBe("hardness-ions-given-as-CaCO3");
  });
});
