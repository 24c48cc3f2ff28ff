import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { VERBS } from "../apps/cli/src/registry.ts";

/** The help as a user sees it, through the committed shim; its examples are run beside the command line itself. */
const root = fileURLToPath(new URL("..", import.meta.url));
const tapside = (...args: string[]) =>
  spawnSync(process.execPath, ["bin/tapside.mjs", ...args], { cwd: root, encoding: "utf8" });

describe("tapside --help", () => {
  const overview = tapside("--help");
  it("ends well", () => expect(overview.status).toBe(0));
  it.each(Object.keys(VERBS))("names %s", (name) => expect(overview.stdout).toContain(`  ${name} `));
});

it.each(Object.keys(VERBS))(
  "tapside %s --help shows usage",
  (name) => {
    const { status, stdout } = tapside(...name.split(" "), "--help");
    expect(status).toBe(0);
    for (const way of VERBS[name]!.ways) expect(stdout).toContain(`tapside ${name} ${way}`);
  },
  60_000,
);

it("an unknown verb, a missing file, a folder, a place that is none and a table without the columns end in a sentence, never in a stack", () => {
  for (const args of [
    ["no-such-verb"],
    ["unit", "no-such-file.csv"],
    ["assess", "reference"],
    ["convert", "1", "psi"],
    ["water", "reference/water-cases/open.csv", "-o", "no-such-folder/out.csv"],
    ["convert", "1", "psi", "°C"],
  ]) {
    const { status, stderr } = tapside(...args);
    expect(status).not.toBe(0);
    expect(stderr.trim()).toMatch(/\w+ \w+/);
    expect(stderr).not.toContain("    at ");
  }
}, 60_000);
