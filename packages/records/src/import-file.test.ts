import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { exportFile } from "./export-file.ts";
import { importFile } from "./import-file.ts";
import { fromBase64, toBase64 } from "./internal/base64.ts";
import { migrate } from "./migrate.ts";
import { sha256Hex } from "./sha256.ts";
import { sampleChange } from "./test-support/store-contract.ts";

const bytes = Uint8Array.from([255, 216, 0, 7]);
const content = {
  changes: [
    sampleChange("a"),
    sampleChange("b", { fields: { notes: "Zürich\n€ \u2028", unknownOne: [1, null] } }),
  ],
  photos: [{ hash: sha256Hex(bytes), mime: "image/jpeg", bytes }],
};
const text = exportFile(content);

test("what was exported comes back", () => {
  expect(importFile(text)).toEqual({ kind: "known", value: content });
  expect(importFile(text.replaceAll("\n", "\r\n"))).toEqual({ kind: "known", value: content });
});

test("a file of the first schema imports", () => {
  const fixture = readFileSync(new URL("fixtures/schema-1.jsonl", import.meta.url), "utf8");
  const outcome = importFile(fixture);
  expect(outcome.kind === "known" && outcome.value.changes.length).toBe(3);
});

test.each([
  ["", "file-empty"],
  ["name,age\nElm,3", "file-foreign"],
  ['{"format":"other"}', "file-foreign"],
  [text.replace('"schema":1', '"schema":2'), "file-newer"],
  [text.split("\n").slice(0, 3).join("\n"), "file-truncated"],
  [text.slice(0, -30), "file-truncated"],
  [text.replace("image/jpeg", "image/png"), "file-altered"],
])("a file that is not whole is refused %#", (broken, code) => {
  expect(importFile(broken)).toMatchObject({ kind: "refused", code });
});

test("no cut of a file imports", () => {
  fc.assert(
    fc.property(fc.nat(text.length - 3), (length) => importFile(text.slice(0, length)).kind === "refused"),
    { seed: 7, numRuns: 300 },
  );
});

test("RFC 4648 section 10: the base 64 vectors", () => {
  const vectors = {
    "": "",
    f: "Zg==",
    fo: "Zm8=",
    foo: "Zm9v",
    foob: "Zm9vYg==",
    fooba: "Zm9vYmE=",
    foobar: "Zm9vYmFy",
  };
  for (const [plain, coded] of Object.entries(vectors)) {
    expect(toBase64(new TextEncoder().encode(plain))).toBe(coded);
    expect(new TextDecoder().decode(fromBase64(coded))).toBe(plain);
  }
});

test("migrations run one after the other and keep unknown members", () => {
  const steps = [1, 2].map((n) => (change: ReturnType<typeof sampleChange>) => ({
    ...change,
    fields: { ...change.fields, [`step${n}`]: true },
  }));
  const old = { ...sampleChange("a"), extra: "kept" };
  const fields = { name: "a", step1: true, step2: true };
  expect(migrate(old, steps)).toEqual({ kind: "known", value: { ...old, fields, schema: 3 } });
  expect(migrate({ ...old, schema: 4 }, steps)).toMatchObject({ kind: "refused", code: "change-newer" });
});
