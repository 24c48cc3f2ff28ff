import type { UnitFile } from "@tapside/records";
import { describe, expect, it } from "vitest";
import { assess } from "./assess.ts";
import { context, fileOf, nothingSeen, ppm, type TypedReadings, visitOf } from "./testing/build.ts";

type Appliance = UnitFile["appliances"][number];

const oven = (more: Partial<Appliance> = {}): Appliance => ({
  id: "oven",
  name: "Oven",
  type: "combiOven",
  limits: [],
  ...more,
});
const judged = (appliance: Appliance, read: TypedReadings, unit: Partial<UnitFile["unit"]> = {}) =>
  assess(
    fileOf("kitchen", unit, [], [visitOf("today", "annual", "2026-03-01", read)], [appliance]),
    "today",
    context,
  ).findings.filter((one) => one.id.startsWith("need"));
const hard: TypedReadings = {
  feedTds: [600, "µS/cm"],
  hardness: [250, "mg/L CaCO3"],
  feedChloride: [60, "mg/L"],
  feedPh: [7.4, "pH"],
  feedTemperature: [15, "°C"],
};
const product: TypedReadings = { ...hard, permeateTds: ppm(12), deliveredTds: ppm(15) };
const of = (findings: ReturnType<typeof judged>, verdict: string) =>
  findings.filter((one) => one.verdict === verdict);

/** Chloride against steel: plate heat-exchanger maker's table (304 up to 60 °C: 50 mg/L, to 120 °C: 10; 316 to 120 °C: 80). */
describe("chloride against steel", () => {
  const chloride = (read: number, make: Partial<Appliance>) => {
    const findings = judged(oven({ copperOrBrass: false, ...make }), {
      ...product,
      deliveredChloride: [read, "mg/L"],
    });
    const alone = findings.find((one) => one.id === "need:chloride");
    if (alone) return alone.verdict;
    return findings.find((one) =>
      `${one.detail?.kept ?? ""} ${one.detail?.open ?? ""}`.split(" ").includes("chloride"),
    )?.verdict;
  };
  it.each([
    [30, { steelGrade: "304", hottestC: 100 }, "outside"],
    [30, { steelGrade: "316", hottestC: 100 }, "within"],
    [30, { steelGrade: "304", hottestC: 55 }, "within"],
    [11, { steelGrade: "304", hottestC: 100 }, "tooClose"],
  ] as const)("%d mg/L on %o is %s", (read, make, verdict) => {
    expect(chloride(read, make)).toBe(verdict);
  });
  it("an unknown grade is asked for only where the grades disagree", () => {
    expect(chloride(30, { hottestC: 100 })).toBe("cannotTell");
    expect(chloride(3, { hottestC: 100 })).toBe("within");
    expect(chloride(400, { hottestC: 100 })).toBe("outside");
    const open = judged(oven({ copperOrBrass: false, hottestC: 100 }), {
      ...product,
      deliveredChloride: [30, "mg/L"],
    }).find((one) => one.verdict === "cannotTell");
    expect(open?.missing).toEqual(["appliance.steelGrade"]);
  });
  it("steel hotter than its table goes is not told rather than passed over in silence", () => {
    const findings = judged(oven({ copperOrBrass: false, steelGrade: "304", hottestC: 125 }), {
      ...product,
      deliveredChloride: [3, "mg/L"],
    });
    const open = findings.find((one) => one.verdict === "cannotTell");
    expect(open).toMatchObject({ detail: { open: "chloride" }, missing: ["steelTable"] });
    expect(chloride(3, { steelGrade: "316", hottestC: 125 })).toBe("within");
    /** 316 is told to 130 °C (25 mg/L): above it whichever the grade is, below it only 316 is told. */
    expect(chloride(40, { hottestC: 125 })).toBe("outside");
    expect(chloride(3, { hottestC: 125 })).toBe("cannotTell");
  });
});

describe("what was not read is completed from the feed and the membrane's passage", () => {
  it("a bypassed unit's hard feed is too hard for a steamer: 250 mg/L over 4 gpg (WC&P, 15 July 2000)", () => {
    const file = fileOf(
      "kitchen",
      {},
      [],
      [visitOf("today", "annual", "2026-03-01", hard, { answers: { inUse: "bypassed" } as never })],
      [oven()],
    );
    const hardness = assess(file, "today", context).findings.find((one) => one.id === "need:hardness");
    expect(hardness).toMatchObject({ verdict: "outside", limit: { high: 68 }, rule: "samples-95" });
    expect(hardness?.figure?.value).toBeGreaterThan(230);
    expect(hardness?.figure?.value).toBeLessThan(270);
  });
  it("through a sound membrane it keeps it, and silica", () => {
    const kept = of(judged(oven({ copperOrBrass: false, steelGrade: "316" }), product), "within")[0];
    expect(String(kept?.detail?.kept).split(" ")).toEqual(
      expect.arrayContaining(["hardness", "silica", "chloride"]),
    );
  });
  it("permeate is too little for copper: under 100 µS/cm (ASPE Pipeline; figure common practice)", () => {
    const copper = judged(oven({ copperOrBrass: true, steelGrade: "316" }), product);
    expect(of(copper, "outside").map((one) => one.id)).toContain("need:conductivity25");
    const unknown = of(judged(oven({ steelGrade: "316" }), product), "cannotTell")[0];
    expect(unknown?.missing).toContain("appliance.copperOrBrass");
    const none = judged(oven({ copperOrBrass: false, steelGrade: "316" }), product);
    expect(none.map((one) => one.id)).not.toContain("need:conductivity25");
  });
  it("after a remineraliser hardness waits for its own test, chloride does not", () => {
    const findings = judged(oven({ copperOrBrass: false, steelGrade: "316" }), product, {
      remineraliser: true,
    });
    expect(of(findings, "cannotTell")[0]?.missing).toEqual(["deliveredHardness"]);
    expect(of(findings, "within")[0]?.detail?.kept).toContain("chloride");
  });
  it("without the delivered solids it says so", () => {
    expect(of(judged(oven(), hard), "cannotTell")[0]?.missing).toContain("deliveredTds");
  });
});

describe("the coffee standard (Specialty Coffee Association of America)", () => {
  const brewer = {
    id: "b",
    name: "Brewer",
    type: "coffee",
    steelGrade: "316",
    copperOrBrass: false,
    limits: [],
  } as const;
  it("permeate of 15 ppm is below its 75", () => {
    expect(of(judged(brewer, product), "outside").map((one) => one.id)).toContain("need:tds442");
  });
  it("chlorine: a test that shows nothing at its step keeps it, 0.5 mg/L breaks it, none read is asked for", () => {
    const kept = (read: TypedReadings) => judged(brewer, { ...product, ...read });
    expect(of(kept({ chlorineAfter: nothingSeen(0.02) }), "within")[0]?.detail?.kept).toContain(
      "totalChlorine",
    );
    expect(of(kept({ chlorineAfter: [0.5, "mg/L"] }), "outside").map((one) => one.id)).toContain(
      "need:totalChlorine",
    );
    expect(of(kept({}), "cannotTell")[0]?.missing).toContain("chlorineAfter");
  });
});
