import type { UnitFile } from "@tapside/records";
import { messagesIn } from "@tapside/words/every-language";
import { describe, expect, it } from "vitest";
import { demoUnit } from "./test-support/demo-record.ts";
import { waterHistoryFigure } from "./water-history-figure.ts";

/** A unit whose visits read these feeds, µS/cm, a month apart. An invented works that changes its source. */
function fed(values: readonly number[]): UnitFile {
  const file = demoUnit(1);
  const visit = file.visits.at(-1)!;
  const visits = values.map((value, i) => ({
    ...visit,
    id: `v${i}`,
    startedAt: `2026-0${i + 1}-10T09:00:00.000Z`,
    readings: { asFound: { feedTds: { value, raw: String(value), unit: "µS/cm" } }, asLeft: {} },
  }));
  return { ...file, visits } as unknown as UnitFile;
}
const figure = (file: UnitFile, at: number, language: "en" | "es" = "en") =>
  waterHistoryFigure(file, file.visits[at]!, messagesIn(language), "UTC");
const textOf = (blocks: ReturnType<typeof figure>) =>
  blocks.map((block) => ("text" in block ? block.text : "")).join("\n");

describe("the history of the feed in the record", () => {
  it("is left out before there are three readings", () => {
    expect(figure(fed([400, 410]), 1)).toEqual([]);
    expect(figure(fed([400, 404, 402]), 1)).toEqual([]);
    expect(figure(fed([400, 404, 402]), 2)).toHaveLength(3);
  });
  it("names the step by its day and both levels", () => {
    expect(textOf(figure(fed([400, 404, 402, 690]), 3))).toContain(
      "Step up by 10 Apr 2026: 400 µS/cm to 690 µS/cm.",
    );
    expect(textOf(figure(fed([400, 404, 402]), 2))).toContain("No step.");
  });
  it("shows nothing of visits after the one it is the record of", () => {
    expect(textOf(figure(fed([400, 404, 402, 690]), 2))).toContain("No step.");
  });
  it("speaks Spanish", () => {
    expect(textOf(figure(fed([400, 404, 402, 690]), 3, "es"))).toMatch(
      /Salto hacia arriba el .*de 400 .* a 690/,
    );
  });
});
