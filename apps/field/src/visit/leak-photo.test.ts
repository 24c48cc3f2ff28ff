import type { KeptVisit } from "@tapside/records";
import { expect, it } from "vitest";
import { LEAK, wantsLeakPhoto } from "./leak-photo.ts";

const visit = (fields: object) =>
  ({ exceptions: {}, answers: {}, photos: {}, ...fields }) as unknown as KeptVisit;
const seen = { exceptions: { leaks: { state: "found" } } };
const photo = (hash: string | null, what = LEAK) => ({ photos: { p: { for: what, hash, at: "" } } });

it("a leak seen or complained of wants its photo first; nothing else does", () => {
  expect(wantsLeakPhoto(visit({}))).toBe(false);
  expect(wantsLeakPhoto(visit({ exceptions: { tank: { state: "found" } } }))).toBe(false);
  expect(wantsLeakPhoto(visit(seen))).toBe(true);
  expect(wantsLeakPhoto(visit({ answers: { complaint: { items: ["leak"] } } }))).toBe(true);
});

it("a photo of the leak itself, kept, or a reason why there is none is enough; one only asked for is not", () => {
  expect(wantsLeakPhoto(visit({ ...seen, ...photo("abc") }))).toBe(false);
  expect(wantsLeakPhoto(visit({ ...seen, ...photo(null) }))).toBe(true);
  expect(wantsLeakPhoto(visit({ ...seen, ...photo("abc", "asFound") }))).toBe(true);
  expect(wantsLeakPhoto(visit({ ...seen, answers: { leakPhoto: { reason: "dark" } } }))).toBe(false);
});
