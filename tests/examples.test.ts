import { readFileSync } from "node:fs";
import { assess } from "@tapside/assessment";
import { bookOf, EMPTY_STATE, fold, importFile, unitFile } from "@tapside/records";
import { describe, expect, it } from "vitest";
import { DISTRICT } from "../examples/district.ts";
import { examples } from "../examples/make-demo.ts";

const textOf = (name: string) => readFileSync(new URL(`../examples/${name}`, import.meta.url), "utf8");

const EXAMPLES = examples();

/** A record once issued is frozen; the words of today need not be those it was issued in. */
const withoutRecords = (text: string) =>
  text.split("\n").filter((line) => !line.includes('"kind":"serviceRecord"') && !line.startsWith('{"end"'));

it.each(Object.keys(EXAMPLES))("%s is what the district's data and the model give", (name) => {
  expect(withoutRecords(textOf(name))).toEqual(withoutRecords(EXAMPLES[name]!));
});

/** The district's truth is written beside each visit; its judgement must find it within its own uncertainty. */
describe("the judgement of the demo district finds the truth it was made from", () => {
  const content = importFile(textOf("larkmoor.tapside.json"));
  if (content.kind !== "known") throw new Error("the example does not import");
  const book = bookOf(fold(EMPTY_STATE, content.value.changes));
  const units = DISTRICT.map((truth, i) => ({ truth, file: unitFile(book, `demo:${i + 1}:unit`)! }));
  const judgeable = units.filter(({ truth }) => truth.visits.length > 1 && !truth.portsAbsent);

  it.each(judgeable.map(({ truth, file }) => [truth.site, truth, file] as const))("%s", (_, truth, file) => {
    const last = truth.visits.at(-1)!;
    const visit = file.visits.at(-1)!;
    const { figures } = assess(file, visit.id, {
      asOf: `${last.day}T12:00:00Z`,
      timeZone: "UTC",
      settings: {},
    });
    const { flowRatio, saltRatio } = figures.asFound;
    if (flowRatio.kind !== "known" || saltRatio.kind !== "known") throw new Error("not judged");
    expect(Math.abs(flowRatio.value.value - last.water)).toBeLessThan(2 * flowRatio.value.u);
    expect(Math.abs(saltRatio.value.value - last.salt)).toBeLessThan(2 * saltRatio.value.u);
  });
});
