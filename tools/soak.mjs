// The long statistics: many more samples and a fresh seed, printed so that a failure can be run again.
import { spawnSync } from "node:child_process";
import { randomInt } from "node:crypto";
import { ensureInstalled, root } from "./ensure-ready.mjs";

ensureInstalled();
const seed = process.env.TAPSIDE_SEED ?? String(randomInt(2 ** 31));
console.log(`TAPSIDE_SEED=${seed}`);
const { status } = spawnSync(
  process.execPath,
  ["node_modules/vitest/vitest.mjs", "run", "--project", "unit", "--testTimeout", "600000"],
  {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, TAPSIDE_DEPTH: "soak", TAPSIDE_SEED: seed },
  },
);
process.exit(status ?? 1);
