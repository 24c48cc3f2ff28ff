import { loadEngine, scoreAllTests, scoreOutside, scorePairs, scorePolicies } from "@tapside/diagnosis";
import type { CliIo } from "../command-verb.ts";

/** Slow parts run on a share of the cases, never on fewer than this. */
const FEWEST = 20;
const share = (cases: number, part: number) => Math.min(cases, Math.max(FEWEST, Math.round(cases / part)));

const rounded = (_: string, value: unknown): unknown =>
  typeof value === "number" ? Number(value.toFixed(4)) : value;

/** The table of scores on simulated visits as JSON. */
export async function printSimulated(named: Readonly<Record<string, string>>, io: CliIo): Promise<number> {
  const cases = Number(named["--simulate"]);
  const seed = Number(named["--seed"] ?? "");
  if (!Number.isInteger(cases) || cases < 1 || !Number.isInteger(seed) || !named["--seed"]) {
    io.complain("Name whole numbers: --simulate N --seed S.");
    return 2;
  }
  const altered = named["--altered"] !== undefined;
  const engine = await loadEngine();
  const plan = { cases, seed, altered };
  const table = {
    heading: "simulated",
    truth: altered ? "drawn from a deliberately altered model" : "drawn from the model itself",
    cases,
    seed,
    allTests: {
      studiedCauses: scoreAllTests(engine, plan, "studied"),
      wholeCatalogue: scoreAllTests(engine, plan, "whole"),
    },
    adaptive: scorePolicies(engine, { ...plan, cases: share(cases, 10) }),
    twoCauses: scorePairs(engine, plan),
    outside: scoreOutside(engine, { ...plan, cases: share(cases, 30) }),
  };
  io.print(JSON.stringify(table, rounded, 1));
  return 0;
}
