import { readFileSync } from "node:fs";
import { bookOf, EMPTY_STATE, fold, importFile, unitFile } from "@tapside/records";
import { messagesIn } from "@tapside/words/every-language";
import { kitchenInLanguage } from "@tapside/words/kitchen";
import { describe, expect, it } from "vitest";
import { kitchenDay } from "./kitchen-day.ts";

const district = importFile(
  readFileSync(new URL("../../../examples/larkmoor.tapside.json", import.meta.url), "utf8"),
);
if (district.kind !== "known") throw new Error(district.kind);
const book = bookOf(fold(EMPTY_STATE, district.value.changes));
const context = { asOf: "2026-11-25T08:00:00Z", timeZone: "UTC", settings: {} };
const file = unitFile(book, "demo:20:unit")!;

const said = (language: string, litresPerDay: number | undefined) => {
  const appliances = file.appliances.map((one) => ({ ...one, litresPerDay: litresPerDay as never }));
  const [block] = kitchenDay({ ...file, appliances }, context, {
    words: messagesIn(language),
    kitchen: kitchenInLanguage(language),
  });
  return block?.kind === "list" ? block.items.join(" ") : "";
};

describe("a busy day in the owner's words", () => {
  it("says nothing where nothing was told", () => {
    expect(said("en", undefined)).toBe("");
  });
  it("one litre is kept up with and nothing else is proposed", () => {
    expect(said("en", 1)).toMatch(/asks 1 ± 0 L.*keeps up\./);
    expect(said("en", 1)).not.toContain("Enough with");
  });
  it("a thousand litres run short, and nothing tried is enough", () => {
    expect(said("en", 1000)).toMatch(/asks 1000 ± 400 L.*runs short\. Neither/);
    expect(said("es", 1000)).toMatch(/pide 1000 ± 400 L.*no alcanza\. Ni un segundo tanque/);
  });
  it("in between the least that surely helps is named with its air charge", () => {
    const serves = Number(/serves (\d+)/.exec(said("en", 100))?.[1]);
    expect(serves).toBeGreaterThan(5);
    expect(said("en", Math.round(1.1 * serves))).toMatch(/Enough with: .* air at \d+ psi, \d+ to \d+ L\./);
  });
});
