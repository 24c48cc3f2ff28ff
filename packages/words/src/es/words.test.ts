import { describe, expect, it } from "vitest";
import { assess } from "../../../assessment/src/assess.ts";
import { context } from "../../../assessment/src/testing/build.ts";
import { drainAllNight, ordinaryVisit, tasteComplaint } from "../../../assessment/src/testing/trials.ts";
import { en } from "../en/index.ts";
import { refusalTexts as english } from "../en/refusals.ts";
import { es } from "./index.ts";
import { refusalTexts } from "./refusals.ts";

/** The same in both languages: signs, symbols, and words that Spanish writes alike. */
const ALIKE = /^(?:|pH|mg\/L.*|µS\/cm|°C|[\w.%/³-]{1,7}|NaCl|.*“x”.*|provisional)$/;

type Tree = Readonly<Record<string, unknown>>;

const texts = (tree: Tree, path = ""): [string, string][] =>
  Object.entries(tree).flatMap(([key, value]): [string, string][] =>
    typeof value === "string"
      ? [[`${path}${key}`, value]]
      : typeof value === "object" && value !== null
        ? texts(value as Tree, `${path}${key}.`)
        : [],
  );

const spanish = new Map(texts(es as unknown as Tree));

it("has every fixed text of English, and says it in its own words", () => {
  const all = texts(en as unknown as Tree);
  expect(all.length).toBeGreaterThan(250);
  expect(all.map(([key]) => key).filter((key) => !spanish.has(key))).toEqual([]);
  expect(all.filter(([key, text]) => spanish.get(key) === text && !ALIKE.test(text))).toEqual([]);
});

it("refuses in Spanish whatever is refused in English", () => {
  expect(Object.keys(english).filter((code) => !(code in refusalTexts))).toEqual([]);
});

describe("details of a refusal", () => {
  const used = (said: (typeof english)[string]) => {
    const names = new Set<string>();
    const watch = new Proxy({}, { get: (_, name) => names.add(String(name)) && "x" });
    if (typeof said !== "string") said(watch);
    return [...names].filter((name) => name !== "row").sort();
  };
  it.each(Object.keys(english))("%s uses the same in both", (code) => {
    expect(used(refusalTexts[code]!)).toEqual(used(english[code]!));
  });
});

describe("a judgement in Spanish", () => {
  it.each([ordinaryVisit(), tasteComplaint(), drainAllNight()])("has words of its own", (file) => {
    const judged = assess(file, "today", context);
    for (const one of judged.findings) {
      expect(es.finding(one).title).not.toBe(en.finding(one).title);
      expect(es.finding(one).title.length).toBeLessThan(36);
    }
    for (const { id } of judged.tasks) expect(es.taskTitle(id)).not.toBe(en.taskTitle(id));
    for (const id of judged.tasks.flatMap(({ cautions = [] }: { cautions?: readonly string[] }) => cautions))
      expect(es.caution(id)).not.toBe(en.caution(id));
  });
});

it("names what is missing with its verb", () => {
  expect(es.missing({ kind: "missing", missing: ["feedTds"] })).toBe(
    "no se puede saber, porque falta el TDS de entrada",
  );
});
