import { expect, test } from "vitest";
import { checkText, checkValue } from "./check-text.ts";

test.each([
  ["a\0b", "text-has-nul"],
  ["\ud83d", "text-has-half-character"],
  ["x\ude00", "text-has-half-character"],
])("text is refused with its reason %#", (text, code) => {
  expect(checkText(text)).toMatchObject({ kind: "refused", code });
  expect(checkValue({ deep: [{ [text]: 1 }] })).toMatchObject({ kind: "refused", code });
});

test("whole characters of every plane pass", () => {
  expect(checkText("Zürich \u{1f600}")).toMatchObject({ kind: "known" });
});
