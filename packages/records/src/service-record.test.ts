import { expect, test } from "vitest";
import { bookOf } from "./book-of.ts";
import type { Change, FieldValue } from "./change.ts";
import { EMPTY_STATE, fold } from "./fold.ts";
import { freeze, inputsChangedSince, inputsMark, verifyRecord } from "./service-record.ts";
import { unitFile } from "./unit-file.ts";

let n = 0;
const put = (kind: string, record: string, fields: Record<string, FieldValue>): Change => ({
  id: `c${String(++n).padStart(3, "0")}`,
  record,
  kind,
  fields,
  at: `2026-03-02T08:00:00.000Z/${String(n).padStart(4, "0")}`,
  device: "d",
  schema: 1,
});

const base = fold(EMPTY_STATE, [
  put("site", "s", { name: "Elm" }),
  put("point", "p", { site: "s" }),
  put("unit", "u", { point: "p" }),
  put("appliance", "a", { point: "p", site: "s" }),
  put("limit", "l", { appliance: "a", quantity: "tds", high: 50 }),
  put("visit", "v2", { unit: "u", startedAt: "2026-03-02T08:00:00+01:00" }),
  put("visit", "v1", { unit: "u", startedAt: "2025-03-02T08:00:00Z" }),
]);
const fileOf = (...more: Change[]) => unitFile(bookOf(fold(base, more)), "u")!;

test("a unit file joins limits to the appliances of its point, visits oldest first", () => {
  const file = fileOf();
  expect(file.visits.map((visit) => visit.id)).toEqual(["v1", "v2"]);
  expect(file.appliances[0]?.limits[0]?.high).toBe(50);
  expect(unitFile(bookOf(base), "unheard-of")).toBeUndefined();
});

test("a unit whose site and point have not come yet still has a file", () => {
  const orphan = fold(EMPTY_STATE, [put("unit", "u", { point: "p9" })]);
  expect(unitFile(bookOf(orphan), "u")).toMatchObject({ point: { id: "p9" }, site: { id: "" } });
});

test("a frozen record verifies, an altered one does not", () => {
  const frozen = freeze({ b: 1, a: "x" });
  expect(frozen.json).toBe('{"a":"x","b":1}');
  expect(verifyRecord(frozen)).toEqual({ kind: "known", value: { a: "x", b: 1 } });
  expect(verifyRecord({ ...frozen, json: '{"a":"x","b":2}' })).toMatchObject({ code: "record-altered" });
});

test("inputs have changed when a reading of the visit or the unit's plate changed, not when a later visit came", () => {
  const mark = inputsMark(fileOf(), "v1");
  expect(inputsChangedSince(mark, fileOf(put("visit", "v1", { closed: true })), "v1")).toBe(false);
  expect(inputsChangedSince(mark, fileOf(put("visit", "v2", { technician: "Ines" })), "v1")).toBe(false);
  expect(inputsChangedSince(mark, fileOf(put("visit", "v1", { technician: "Ines" })), "v1")).toBe(true);
  expect(inputsChangedSince(mark, fileOf(put("unit", "u", { tankL: 12 })), "v1")).toBe(true);
});
