import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { CliIo } from "./command-verb.ts";
import { VERBS } from "./registry.ts";
import { runCli } from "./run.ts";

function capture(files: Record<string, string> = {}) {
  const out: string[] = [];
  const err: string[] = [];
  const written: Record<string, string | Uint8Array> = {};
  const io: CliIo = {
    readText: (path) => files[path] ?? readFileSync(path, "utf8"),
    readBytes: (path) => readFileSync(path),
    writeText: (path, text) => {
      written[path] = text;
    },
    writeBytes: (path, bytes) => {
      written[path] = bytes;
    },
    print: (line) => out.push(line),
    complain: (line) => err.push(line),
  };
  return { io, out, err, written };
}

describe("every example of the help", () => {
  const examples = Object.values(VERBS).flatMap((verb) => verb.examples);
  it.each(examples.map((example) => [example.args.join(" "), example] as const))(
    "%s prints what it says",
    async (_, example) => {
      const { io, out } = capture();
      await runCli(example.args, io);
      expect(out.join("\n")).toContain(example.prints);
    },
  );
});

it("lists refused rows with their reason and says so by the exit code", async () => {
  const header =
    "id,feed_pressure_kPa_gauge,temperature_C,feed_NaCl_mg_L,area_m2,A_L_m2_h_bar,B_L_m2_h,beta,restrictor_L_h,restrictor_rated_kPa,tank_pressure_kPa_gauge";
  const good = "a,433,19.7,1674,1.28,4.64,0.746,1,74.7,414,128";
  const { io, err, written } = capture({
    "in.csv": `${header}\n${good}\nb,x,19.7,1674,1.28,4.64,0.746,1,74.7,414,128\n`,
  });
  expect(await runCli(["unit", "in.csv", "-o", "out.csv"], io)).toBe(1);
  expect(String(written["out.csv"]).trim().split("\n")).toHaveLength(2);
  expect(err[0]).toMatch(/^row 3 refused: /);
});

it.each([
  [["convert", "1", "psi", "gpg"], 1],
  [["convert", "1,2,3", "psi", "bar"], 1],
  [["convert"], 2],
  [["no-such-verb"], 2],
  [["unit"], 2],
] as const)("%j ends with exit code %d and a sentence", async (args, code) => {
  const { io, err } = capture();
  expect(await runCli(args, io)).toBe(code);
  expect(err.join(" ").length).toBeGreaterThan(8);
});
