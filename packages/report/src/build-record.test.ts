import { canonicalJson, freeze, verifyRecord } from "@tapside/records";
import { describe, expect, it } from "vitest";
import type { RecordContent } from "./block.ts";
import { DEMO_UNITS, demoRecord, demoUnit, withLastVisit } from "./test-support/demo-record.ts";

const wordsOf = (content: RecordContent) =>
  content.blocks
    .flatMap((block) =>
      "text" in block ? [block.text] : block.kind === "list" ? [block.title, ...block.items] : [],
    )
    .join("\n");

const list = (content: RecordContent, title: string) =>
  content.blocks.find((block) => block.kind === "list" && block.title.startsWith(title));

describe("a service record", () => {
  it.each(DEMO_UNITS)("of unit %i is the same text each time, and its mark holds", (n) => {
    const frozen = freeze(demoRecord(n));
    expect(freeze(demoRecord(n))).toEqual(frozen);
    expect(verifyRecord(frozen).kind).toBe("known");
  });

  it.each(DEMO_UNITS)("of unit %i promises nothing, certifies nothing and tells no odds", (n) => {
    const text = wordsOf(demoRecord(n));
    expect(text).not.toMatch(/certif|conform|guarantee|complian|probab|likelihood|\bodds\b|NaN|undefined/i);
    expect(text).toContain("Does not test for");
  });

  it.each(DEMO_UNITS)(
    "of unit %i says who must not drink it and whose work is another's (trade practice, no source)",
    (n) => {
      const text = wordsOf(demoRecord(n));
      for (const said of [
        /not for dialysis/i,
        /infant formula/,
        /humidifiers/,
        /backflow.*licensed/,
        /licensed plumber.*reducing valve/,
      ])
        expect(text).toMatch(said);
    },
  );

  it("no longer has its mark when a single character is another", () => {
    const { json, mark } = freeze(demoRecord(1));
    for (let i = 0; i < json.length; i += Math.ceil(json.length / 50)) {
      const other = String.fromCharCode(json.charCodeAt(i) ^ 1);
      expect(verifyRecord({ json: json.slice(0, i) + other + json.slice(i + 1), mark }).kind).toBe("refused");
    }
  });

  it("survives being written and read back as JSON", () => {
    const content = demoRecord(2);
    expect(canonicalJson(JSON.parse(JSON.stringify(content)))).toBe(freeze(content).json);
  });

  it("keeps what it was judged from, without the telephone and the drawn name", () => {
    const content = demoRecord(1, (file) => ({
      ...withLastVisit(file, (visit) => ({
        ...visit,
        answers: { ...visit.answers, signature: { kind: "signed", name: "A", role: "B", path: "M1 2L3 4" } },
      })),
      site: { ...file.site, askPhone: "0100 200 300" },
    }));
    const inputs = JSON.stringify(content.inputs);
    expect(inputs).toContain('"feedTds"');
    expect(inputs).not.toContain("0100 200 300");
    expect(inputs).not.toContain("M1 2L3 4");
  });

  it("keeps the readings of the visits it compares with, wherever they lie, and names the record it replaces", () => {
    const file = demoUnit(1);
    const [first, ...rest] = file.visits;
    const early = { ...first!, id: "early", readings: { asFound: {}, asLeft: {} }, kind: "annual" as const };
    const shifted = { ...file, visits: [{ ...early, startedAt: "2000-01-01T00:00:00Z" }, first!, ...rest] };
    const inputs = demoRecord(1, () => shifted).inputs as { visits: { id: string; readings?: unknown }[] };
    expect(inputs.visits.find((visit) => visit.id === first!.id)?.readings).toBeDefined();
  });

  it("does not grow with the visits between the first and this one by more than their marks", () => {
    const grown = (times: number) => {
      const file = demoUnit(1);
      const [first, ...rest] = file.visits;
      const between = Array.from({ length: times }, (_, i) => ({ ...first!, id: `between${i}` }));
      return JSON.stringify(demoRecord(1, () => ({ ...file, visits: [first!, ...between, ...rest] })).inputs)
        .length;
    };
    expect(grown(20) - grown(0)).toBeLessThan(20 * 200);
  });
});

describe("what the record says of how the unit was left", () => {
  it("a bypass with who decided and its end date", () => {
    const decisions = list(demoRecord(4), "Advice");
    expect(decisions).toMatchObject({ items: [expect.stringContaining("until 15 Dec 2026")] });
  });

  it("ports that are not fitted are named, not called forgotten", () => {
    const content = demoRecord(8);
    expect(list(content, "Not read")).toMatchObject({
      items: expect.arrayContaining(["Water meter: not fitted on this unit"]),
    });
  });

  it("an exception of the inspection, valves with their seal, and work that was left with its reason", () => {
    const content = demoRecord(1, (file) =>
      withLastVisit(file, (visit) => ({
        ...visit,
        exceptions: { drainLine: { state: "left", note: "hose pushed into the drain" } },
        work: { sanitise: { state: "left", reason: "kitchen busy" } },
        answers: {
          ...visit.answers,
          valvesAsLeft: { feed: "open", tank: "open", bypass: "shut", sample: "shut", seal: "0417" },
        },
      })),
    );
    expect(list(content, "Inspection")).toMatchObject({
      items: ["drain line and air gap: left as it was, hose pushed into the drain"],
    });
    expect(list(content, "Valves")).toMatchObject({
      items: ["feed open, tank open, bypass shut, seal 0417, sample shut"],
    });
    expect(wordsOf(content)).toContain("left, kitchen busy");
  });

  it("nobody present is said, not left blank", () => {
    const content = demoRecord(1, (file) =>
      withLastVisit(file, (visit) => ({
        ...visit,
        answers: { ...visit.answers, signature: { kind: "notPresent" } },
      })),
    );
    expect(wordsOf(content)).toContain("Nobody of the kitchen was present.");
  });

  it("an unread visit makes a record that says so in every row", () => {
    const content = demoRecord(1, (file) =>
      withLastVisit(file, (visit) => ({ ...visit, readings: { asFound: {}, asLeft: {} } })),
    );
    const table = content.blocks.find((block) => block.kind === "readings");
    expect(table?.kind === "readings" && table.rows.map((row) => row.asLeft.text)).toEqual(
      Array(13).fill("not read"),
    );
  });
});

describe("the sign beside a number", () => {
  const marks = (n: number) => {
    const table = demoRecord(n).blocks.find((block) => block.kind === "readings");
    return table?.kind === "readings"
      ? Object.fromEntries(table.rows.map((row) => [row.title, row.asFound.mark]))
      : {};
  };

  it("an oxidised element passes more of both than today's sound unit would, and more than the limit", () => {
    expect(marks(2)).toMatchObject({
      Permeate: "notExpected",
      "TDS to waste": "notExpected",
      "Membrane flow": "outside",
      "Salt passage": "outside",
    });
  });

  it("that a number is not as expected stands beside the band it was held against, whatever the label says", () => {
    const rows = [...Array(12).keys()].flatMap((n) => {
      const table = demoRecord(n + 1).blocks.find((block) => block.kind === "readings");
      return table?.kind === "readings" ? table.rows : [];
    });
    const signed = rows.filter(({ asFound, asLeft }) => [asFound.mark, asLeft.mark].includes("notExpected"));
    for (const { title, limit } of signed) expect(limit, title).toContain("this unit today");
    expect(signed.map(({ title }) => title)).toContain("Delivered TDS");
  });

  it("outside the label as found and only unexpected as left, a row names both that it was held against", () => {
    const content = demoRecord(1, (file) =>
      withLastVisit(file, (visit) => {
        const read = visit.readings.asFound.deliveredTds!;
        const asFound = { ...visit.readings.asFound, deliveredTds: { ...read, raw: "400", value: 400 } };
        return { ...visit, readings: { asFound, asLeft: { ...visit.readings.asLeft, deliveredTds: read } } };
      }),
    );
    const table = content.blocks.find((block) => block.kind === "readings");
    const row =
      table?.kind === "readings" ? table.rows.find(({ title }) => title === "Delivered TDS") : undefined;
    expect([row?.asFound.mark, row?.asLeft.mark]).toEqual(["outside", "notExpected"]);
    expect(row?.limit).toMatch(/\d ppm.*; .*: this unit today$/);
  });

  it("a healthy unit has none", () => {
    expect(new Set(Object.values(marks(10)))).toEqual(new Set(["none"]));
  });
});
