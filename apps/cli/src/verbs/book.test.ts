import { readFileSync } from "node:fs";
import { exportFile, freeze, importFile } from "@tapside/records";
import { describe, expect, it } from "vitest";
import { runCli } from "../run.ts";

const district = readFileSync(new URL("../../../../examples/larkmoor.tapside.json", import.meta.url), "utf8");

/** Runs a command line against files in memory; the fonts are read from where they lie. */
async function run(args: readonly string[], files: Record<string, string | Uint8Array> = {}) {
  const out: string[] = [];
  const said: string[] = [];
  const written: Record<string, string | Uint8Array> = {};
  const code = await runCli(args, {
    readText: (path) => String(files[path] ?? district),
    readBytes: (path) => readFileSync(path),
    writeText: (path, text) => {
      written[path] = text;
    },
    writeBytes: (path, bytes) => {
      written[path] = bytes;
    },
    print: (line) => out.push(line),
    complain: (line) => said.push(line),
  });
  return { code, out: out.join("\n"), said: said.join("\n"), written };
}

/** The district with one record issued; `alter` changes its text after its mark was taken. */
function issued(alter: (json: string) => string = (json) => json): string {
  const book = importFile(district);
  if (book.kind !== "known") throw new Error("the district does not import");
  const { json, mark } = freeze({
    title: "Service record",
    visit: "demo:1:visit3",
    revision: 1,
    issuedAt: "2026-01-01T00:00:00Z",
    subtitle: "",
    aside: [],
    blocks: [{ kind: "paragraph", text: "as it was frozen" }],
  });
  const last = book.value.changes.at(-1)!;
  const fields = { visit: "demo:1:visit3", revision: 1, mark, json: alter(json) };
  const record = { ...last, id: "issued-1", record: "demo:record", kind: "serviceRecord", fields };
  return exportFile({ ...book.value, changes: [...book.value.changes, record] });
}

it("a sound record verifies; one changed character is found, with exit code 1", async () => {
  expect(await run(["verify", "f"], { f: issued() })).toMatchObject({
    code: 0,
    out: expect.stringMatching(
      /^(sound [^\n]+; judged again: the same\n){3}sound [^\n]+visit demo:1:visit3, revision 1; cannot be judged again: it keeps no inputs\n4 records, 0 broken$/,
    ),
  });
  const altered = issued((json) => json.replace("as it was", "as it wss"));
  expect(await run(["verify", "f"], { f: altered })).toMatchObject({
    code: 1,
    out: expect.stringContaining("BROKEN"),
  });
});

it("an altered record is not printed as if it were sound", async () => {
  const args = ["report", "f", "-o", "x.html", "--visit", "demo:1:visit3"];
  const sound = await run(args, { f: issued() });
  expect(sound.code).toBe(0);
  expect(sound.written["x.html"]).toContain("as it was frozen");
  const altered = await run(args, { f: issued((json) => json.replace("as it was", "as it wss")) });
  expect(altered).toMatchObject({ code: 1, written: {} });
});

it("what report --json prints verifies alone, and not after a change", async () => {
  const { out, written } = await run(["report", "f", "-o", "x.pdf", "--json"]);
  expect(written["x.pdf"]!.slice(0, 4)).toEqual(new TextEncoder().encode("%PDF"));
  expect((await run(["verify", "r"], { r: out })).code).toBe(0);
  expect((await run(["verify", "r"], { r: out.replace("Service record", "Service recorb") })).code).toBe(1);
});

it("a record judged again from its own inputs is the same; rewritten with a new mark it is not, unless older rules explain it", async () => {
  const { out } = await run(["report", "f", "-o", "x.pdf", "--json"]);
  expect((await run(["verify", "r"], { r: out })).out).toMatch(
    /sound .*judged again: the same\n1 record, 0 broken$/,
  );
  const rewritten = (more: object) => {
    const content = JSON.parse(
      JSON.stringify(JSON.parse(out).content).replaceAll('"verdict":"outside"', '"verdict":"within"'),
    );
    const forged = { ...content, ...more };
    return JSON.stringify({ mark: freeze(forged).mark, content: forged });
  };
  expect(await run(["verify", "r"], { r: rewritten({}) })).toMatchObject({
    code: 1,
    out: expect.stringMatching(
      /by the same rules OTHERWISE: findings .*\n1 record, 0 broken, 1 JUDGED OTHERWISE$/,
    ),
  });
  expect(await run(["verify", "r"], { r: rewritten({ rules: 0 }) })).toMatchObject({
    code: 0,
    out: expect.stringMatching(/by rules \d+, it was by rules 0, otherwise: findings /),
  });
});

describe.each([
  ["a booster", { boosterShutOffRiseKPa: 200, boosterOpenFlowLPerH: 400 }],
  ["a permeate pump", { permeatePump: true }],
] as const)("a frozen record of a unit with %s", (_, parts) => {
  /** The district whose last annual visit was of a unit with these parts. */
  function composed(): string {
    const book = importFile(district);
    if (book.kind !== "known") throw new Error("the district does not import");
    const { changes } = book.value;
    const visit = "demo:2:visit3";
    const unit = changes.find(({ record, fields }) => record === visit && "unit" in fields)!.fields.unit;
    const last = changes.at(-1)!;
    const change = { ...last, id: "composed-1", record: String(unit), kind: "unit", fields: { ...parts } };
    return exportFile({ ...book.value, changes: [...changes, change] });
  }
  const issue = async () =>
    (await run(["report", "f", "-o", "x.pdf", "--json", "--visit", "demo:2:visit3"], { f: composed() })).out;

  it("is judged again the same, for each part it was judged by", async () => {
    const out = await issue();
    expect(JSON.parse(out).content.inputs.unit).toMatchObject(parts);
    expect(await run(["verify", "r"], { r: out })).toMatchObject({
      code: 0,
      out: expect.stringMatching(/^sound .*; judged again: the same\n1 record, 0 broken$/),
    });
  });
  it("is judged otherwise once the part is taken out of what it keeps", async () => {
    const { content } = JSON.parse(await issue());
    const unit = Object.fromEntries(Object.entries(content.inputs.unit).filter(([name]) => !(name in parts)));
    const forged = { ...content, inputs: { ...content.inputs, unit } };
    const r = JSON.stringify({ mark: freeze(forged).mark, content: forged });
    expect(await run(["verify", "r"], { r })).toMatchObject({
      code: 1,
      out: expect.stringMatching(/by the same rules OTHERWISE: .*assumed/),
    });
  });
});

it("a record that keeps no inputs says that it cannot be judged again", async () => {
  expect((await run(["verify", "f"], { f: issued() })).out).toContain(
    "cannot be judged again: it keeps no inputs",
  );
});

it("assess gives the same judgement twice, as data", async () => {
  const once = await run(["assess", "f", "--visit", "demo:2:visit3", "--json"]);
  expect(once.code).toBe(0);
  expect(JSON.parse(once.out)).toMatchObject({ version: 1, visit: "demo:2:visit3" });
  expect((await run(["assess", "f", "--visit", "demo:2:visit3", "--json"])).out).toBe(once.out);
});

it("a visit that is not there, and a file that is no book, are said in a sentence", async () => {
  expect(await run(["assess", "f", "--visit", "nowhere"])).toMatchObject({
    code: 2,
    said: "There is no visit nowhere in this file.",
  });
  expect((await run(["verify", "f"], { f: "hello" })).code).toBe(2);
});

it("every reading of the district leaves as a table", async () => {
  const { out, code } = await run(["export", "readings", "f"]);
  expect(code).toBe(0);
  expect(out.split("\n").length).toBeGreaterThan(200);
});
