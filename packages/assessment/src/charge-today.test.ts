import type { KeptVisit, UnitFile } from "@tapside/records";
import { expect, test } from "vitest";
import { CHARGE_WANDERS_KPA, chargeToday, UNREAD_CHARGE_U_KPA, USUAL_CHARGE_KPA } from "./charge-today.ts";
import { fileOf, N1, visitOf } from "./testing/build.ts";
import { ordinaryVisit } from "./testing/trials.ts";

const PSI = 6.894757293168361;
const work = (value: number | undefined, unit: string) =>
  ({
    setAirCharge: { state: "done", ...(value !== undefined && { value, unit }) },
  }) as unknown as KeptVisit["work"];
const before = (more: Partial<KeptVisit>): UnitFile =>
  fileOf(
    "Mill Hollow infants",
    N1,
    [],
    [visitOf("before", "annual", "2025-11-20", {}, more), visitOf("today", "annual", "2026-11-25", {})],
  );
const today = (file: UnitFile) => chargeToday(file, file.visits.at(-1)!);

test("a bucket test of today goes before everything", () => {
  const { value, u } = chargeToday(ordinaryVisit(), ordinaryVisit().visits.at(-1)!);
  expect(value / PSI).toBeCloseTo(3.7, 0);
  expect(u / PSI).toBeGreaterThan(1);
});

test("else what was set last time counts, less surely by a year", () => {
  const { value, u } = today(before({ work: work(18, "psi") }));
  expect(value).toBeCloseTo(18 * PSI, 9);
  expect(u).toBeGreaterThan(CHARGE_WANDERS_KPA);
  expect(u).toBeLessThan(UNREAD_CHARGE_U_KPA);
});

test("a charge set to nobody knows what is not known", () => {
  expect(today(before({ work: work(undefined, "psi") }))).toEqual({
    value: USUAL_CHARGE_KPA,
    u: UNREAD_CHARGE_U_KPA,
  });
  const later = before({ work: work(undefined, "psi") });
  const [set, now] = later.visits;
  const older = { ...set!, id: "older", startedAt: "2024-11-20T06:30:00+00:00", work: work(18, "psi") };
  expect(today({ ...later, visits: [older, set!, now!] }).value).toBe(USUAL_CHARGE_KPA);
});

test("where none was ever found, the appliances' minimum less 2 psi, else the usual one, and hardly sure", () => {
  expect(today(before({}))).toEqual({ value: USUAL_CHARGE_KPA, u: UNREAD_CHARGE_U_KPA });
  const oven = ordinaryVisit().appliances;
  const { value, u } = today({ ...before({}), appliances: oven });
  expect(value / PSI).toBeCloseTo(18, 9);
  expect(u).toBe(UNREAD_CHARGE_U_KPA);
});
