import { expect, it } from "vitest";
import { leaveWayBack, takeWayBack } from "./way-back.ts";

it("leads back once, from its own step of its own visit only", () => {
  leaveWayBack("/visit/a", "read:asFound:feedTds", "cause");
  expect(takeWayBack("/visit/b", "read:asFound:feedTds")).toBeUndefined();
  expect(takeWayBack("/visit/a", "read:asFound:drainFlow")).toBeUndefined();
  expect(takeWayBack("/visit/a", "read:asFound:feedTds")).toBe("cause");
  expect(takeWayBack("/visit/a", "read:asFound:feedTds")).toBeUndefined();
});
