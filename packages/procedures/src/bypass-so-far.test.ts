import type { Answers, KeptVisit, Reading, UnitFile } from "@tapside/records";
import { describe, expect, it } from "vitest";
import { bypassSoFar } from "./index.ts";

const visit = (id: string, day: string, answers: Partial<Answers>, hardnessGpg?: number): KeptVisit => ({
  id,
  startedAt: `${day}T09:00:00Z`,
  readings: {
    asFound:
      hardnessGpg === undefined
        ? {}
        : {
            hardness: {
              raw: String(hardnessGpg),
              value: hardnessGpg,
              unit: "gpg",
              port: "feed",
              at: `${day}T09:00:00Z`,
            } satisfies Reading,
          },
    asLeft: {},
  },
  answers,
  exceptions: {},
  work: {},
  photos: {},
  skipped: [],
});

const stays = (more: Partial<Answers["bypass"]> = {}): Partial<Answers> => ({
  inUse: "bypassed",
  bypass: { name: "R. Hale", role: "head cook", decision: "keepBypassed", ...more },
});

const fileOf = (...visits: readonly KeptVisit[]): UnitFile => ({
  site: { id: "s" },
  point: { id: "p" },
  unit: { id: "u" },
  appliances: [],
  parts: [],
  instruments: new Map(),
  visits,
  openPoints: [],
  settledPoints: [],
  analyses: [],
});

describe("a bypass so far", () => {
  it("counts from the first visit of the unbroken run, and all hardness as scale (mass balance: 10 gpg = 171.2 mg/L, NIST SP 811)", () => {
    const now = visit("d", "2026-11-25", stays({ litresPerDay: 40 }));
    const file = fileOf(
      visit("a", "2026-01-10", stays()),
      visit("b", "2026-03-01", { inUse: "inUse" }, 10),
      visit("c", "2026-10-26", stays()),
      now,
    );
    const found = bypassSoFar(file, now, "2026-11-25")!;
    expect([found.since, found.days]).toEqual(["2026-10-26", 30]);
    expect(found.scaleG.kind === "known" && found.scaleG.value).toBeCloseTo((171.18 * 40 * 30) / 1000, 0);
  });
  it("takes the day somebody knows before the day it was first seen", () => {
    const now = visit("d", "2026-11-25", stays({ since: "2026-09-01" }));
    expect(bypassSoFar(fileOf(now), now, "2026-11-25")?.since).toBe("2026-09-01");
  });
  it("says what is missing instead of guessing a demand", () => {
    const now = visit("d", "2026-11-25", stays());
    expect(bypassSoFar(fileOf(now), now, "2026-11-25")?.scaleG).toEqual({
      kind: "missing",
      missing: ["hardness", "bypass.litresPerDay"],
    });
  });
  it("is nothing for a unit in use", () => {
    const now = visit("d", "2026-11-25", { inUse: "inUse" });
    expect(bypassSoFar(fileOf(now), now, "2026-11-25")).toBeUndefined();
  });
});
