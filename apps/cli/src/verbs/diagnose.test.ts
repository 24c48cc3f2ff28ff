import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import {
  drainAllNight,
  drainTooStrong,
  hardAgain,
  ordinaryVisit,
  runsOutAtOnce,
  tasteComplaint,
} from "../../../../packages/diagnosis/src/testing/trials.ts";
import { bookText, recordsOf } from "../../../../packages/records/src/testing/book-text.ts";
import { argumentsOf } from "../arguments.ts";
import type { CliIo } from "../command-verb.ts";
import { diagnoseVerb } from "./diagnose.ts";

const fromDisk = (path: string) => readFileSync(new URL(`../../../../${path}`, import.meta.url), "utf8");

async function runVerb(args: readonly string[], readText = fromDisk) {
  const printed: string[] = [];
  const complained: string[] = [];
  const never = () => {
    throw new Error("writes nothing");
  };
  const io: CliIo = {
    readText,
    readBytes: never,
    writeText: never,
    writeBytes: never,
    print: (line) => printed.push(line),
    complain: (line) => complained.push(line),
  };
  const read = argumentsOf(args, diagnoseVerb.ways);
  if (typeof read === "string") throw new Error(read);
  const code = await diagnoseVerb.run(read, io);
  return { code, text: printed.join("\n"), complained };
}

it("a visit of a file as JSON: odds with evidence, size, step and plan; the same file gives the same answer", async () => {
  const args = ["examples/one-visit.tapside.json", "--json"];
  const [one, again] = [await runVerb(args), await runVerb(args)];
  expect(one).toEqual(again);
  const answer = JSON.parse(one.text);
  const total = answer.causes.reduce(
    (sum: number, { probability }: { probability: number }) => sum + probability,
    0,
  );
  expect(total).toBeGreaterThan(0.8);
  expect(answer.causes[0].evidence.length).toBeGreaterThan(0);
  expect(answer).toHaveProperty("step.kind");
  expect(answer).toHaveProperty("plan.steps");
  expect(answer).toHaveProperty("nothingIKnowExplainsThis");
});

/** Computed with independent models, rounded as a technician reads, written into the book from the last reading to the first. */
it.each([
  [
    "an ordinary visit",
    ordinaryVisit(),
    ["airChargeLow", "preFilterClogged"],
    /airChargeLow|preFilterClogged/,
    ["preFilter", "handPump"],
  ],
  ["a taste complaint", tasteComplaint(), ["oxidisedMembrane"], /carbonExhausted/, ["carbon", "element"]],
  ["a drain heard all night", drainAllNight(), ["checkValveFailed"], /checkValveFailed/, ["checkValve"]],
  ["a drain too strong", drainTooStrong(), ["restrictorTooBig"], /restrictorTooBig/, ["restrictor"]],
  ["a tank that runs out", runsOutAtOnce(), ["diaphragmRuptured"], /diaphragmRuptured/, ["tank"]],
  ["hard water", hardAgain(), ["softenerFailed"], /softenerFailed/, ["softenerSalt"]],
] as const)(
  "a trial as a file, %s: the cause, what is put right first, and nothing else",
  async (_, file, causes, first, parts) => {
    const { text } = await runVerb(["trial.json", "--visit", "today", "--json"], () =>
      bookText(recordsOf(file)),
    );
    const answer = JSON.parse(text);
    const leading = answer.causes.slice(0, causes.length).map((one: { cause: string }) => one.cause);
    expect(leading.sort()).toEqual(causes);
    expect(answer.plan.steps[0].cause).toMatch(first);
    for (const part of answer.plan.parts) expect(parts).toContain(part);
    expect(answer.nothingIKnowExplainsThis).toBe(false);
  },
);

it("speaks Spanish when asked, its numbers with a comma", async () => {
  const { text } = await runVerb(["examples/one-visit.tapside.json", "--language", "es"]);
  expect(text).toMatch(/lo más probable/);
  expect(text).toMatch(/\n(Próxima prueba|Próximo paso): /);
  expect(text).toMatch(/\d,\d/);
  expect(text).not.toMatch(/\d\.\d/);
  expect(text).not.toMatch(/\b(?:the|most likely|next|against|measure)\b/i);
  expect((await runVerb(["examples/one-visit.tapside.json", "--language", "xx"])).code).toBe(2);
});

it("scores are headed simulated and come again from their seed", async () => {
  const args = ["--simulate", "3", "--seed", "7", "--altered"];
  const [one, again] = [await runVerb(args), await runVerb(args)];
  expect(one.text).toBe(again.text);
  const table = JSON.parse(one.text);
  expect(table.heading).toBe("simulated");
  expect(table.truth).toContain("altered");
  expect(table.allTests.studiedCauses.top1).toHaveProperty("low");
}, 120_000);

it("a simulation without whole numbers is refused in a sentence", async () => {
  const { code, complained } = await runVerb(["--simulate", "many", "--seed", "x"]);
  expect(code).toBe(2);
  expect(complained[0]).toContain("whole numbers");
});
