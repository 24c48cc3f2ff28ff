import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { en } from "@tapside/words/en";
import { expect, test } from "vitest";

/** Every code some source file refuses with. */
function codes(): string[] {
  const files = ["packages", "apps"].flatMap((top) =>
    readdirSync(top, { recursive: true, encoding: "utf8" })
      .filter((path) => /src\/.*\.tsx?$/.test(path) && !/node_modules|\.test\.|dist/.test(path))
      .map((path) => join(top, path)),
  );
  const found = files.flatMap((file) => [
    ...readFileSync(file, "utf8").matchAll(/\brefused\(\s*"([a-z0-9-]+)"/g),
  ]);
  return [...new Set(found.map((match) => match[1]!))].sort();
}

test("every refusal has a sentence of its own", () => {
  const silent = codes().filter((code) => en.refusal({ code }).startsWith("Not possible:"));
  expect(codes().length).toBeGreaterThan(40);
  expect(silent).toEqual([]);
});
