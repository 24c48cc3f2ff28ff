import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

/** Every command of the documents is run as printed, and its output is what stands below it. */
const root = fileURLToPath(new URL("..", import.meta.url));
let folder = "";

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "tapside-readme-"));
  for (const name of ["bin", "reference", "examples"])
    if (existsSync(join(root, name))) symlinkSync(join(root, name), join(folder, name));
});

afterAll(() => rmSync(folder, { recursive: true }));

function sessionsOf(document: string) {
  const text = readFileSync(join(root, document), "utf8");
  return [...text.matchAll(/```console\n([\s\S]*?)```/g)].flatMap(([, block = ""]) =>
    block
      .split(/^\$ /m)
      .slice(1)
      .map((part) => {
        const [command = "", ...output] = part.trimEnd().split("\n");
        return { command, output: output.join("\n") };
      }),
  );
}

const sessions = ["README.md", "CONTRIBUTING.md"].flatMap(sessionsOf);

describe("commands of the documents", () => {
  it.each(sessions)(
    "$command",
    ({ command, output }) => {
      const [program, ...args] = command.split(" ");
      expect(program).toBe("node");
      const { status, stdout } = spawnSync(process.execPath, args, { cwd: folder, encoding: "utf8" });
      expect({ status, output: stdout.trimEnd() }).toEqual({ status: 0, output });
    },
    60_000,
  );
});

it("every path the documents name exists", () => {
  for (const document of ["README.md", "CONTRIBUTING.md"]) {
    const text = readFileSync(join(root, document), "utf8");
    const named = [...text.matchAll(/`((?:packages|apps|reference|tools|tests|bench|bin)\/[\w./-]*)`/g)];
    const absent = named
      .map(([, path]) => path!)
      .filter((path) => !path.includes("dist") && !existsSync(join(root, path)));
    expect(absent).toEqual([]);
  }
});
