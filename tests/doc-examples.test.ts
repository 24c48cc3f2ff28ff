/// <reference types="vite/client" />
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { transpile } from "typescript";
import { describe, expect, it } from "vitest";
import { statementsOf } from "./shown-statements.ts";
import { matches } from "./shown-value.ts";

/** Every `@example` of every package is executed; a line ending in `// => VALUE` must give that value. */
const packages = fileURLToPath(new URL("../packages/", import.meta.url));
const surfaces = import.meta.glob<Record<string, unknown>>("../packages/*/src/index.ts");

const sources = readdirSync(packages, { recursive: true, encoding: "utf8" })
  .filter((path) => /^[^/\\]+[/\\]src[/\\].*\.ts$/.test(path) && !path.endsWith(".test.ts"))
  .sort();

const examplesOf = (source: string) =>
  [...source.matchAll(/\/\*\*(?:(?!\*\/)[\s\S])*?@example[\s\S]*?\*\//g)].flatMap(([block]) =>
    [...block.replace(/^\s*\*? ?/gm, "").matchAll(/```ts\n([\s\S]*?)```/g)].map((fence) => fence[1]!),
  );

const surfaceOf = (name: string) => {
  const load = surfaces[`../packages/${name.replace("@tapside/", "")}/src/index.ts`];
  if (!load) throw new Error(`an example imports ${name}, which is no package of this house`);
  return load();
};

/** Runs one example; resolves to what did not come out as shown. */
async function runExample(code: string): Promise<string[]> {
  const wrong: string[] = [];
  const imports: Record<string, unknown> = {};
  const body = code.replace(
    /^import\s*(?:type\s*)?(\{[^}]*\})\s*from\s*"([^"]+)";?$/gm,
    (_, names: string, from: string) => {
      imports[from] = undefined;
      return `const ${names.replace(/\btype \w+,?/g, "").replaceAll(" as ", ": ")} = imports["${from}"];`;
    },
  );
  for (const name of Object.keys(imports)) imports[name] = await surfaceOf(name);
  const check = (actual: unknown, shown: string, line: string) => {
    if (!matches(actual, shown)) wrong.push(`${line}  gives ${JSON.stringify(actual)}`);
  };
  const script = transpile(statementsOf(body), { target: 9 });
  await new Function("imports", "check", `return (async () => {\n${script}\n})();`)(imports, check);
  return wrong;
}

describe("examples in the documentation", () => {
  for (const path of sources) {
    const examples = examplesOf(readFileSync(join(packages, path), "utf8"));
    examples.forEach((code, i) => {
      it(`${path}${examples.length > 1 ? ` (${i + 1})` : ""}`, async () => {
        expect(code).toContain("// =>");
        expect(await runExample(code)).toEqual([]);
      });
    });
  }
});
