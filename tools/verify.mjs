// Proves the tree, step by step; `node tools/verify.mjs unit types` runs only those steps.
import { execSync, spawnSync } from "node:child_process";
import { ensureApp, ensureCli, root } from "./ensure-ready.mjs";

const bin = (path) => [process.execPath, `node_modules/${path}`];
const vitest = (project) => [...bin("vitest/vitest.mjs"), "run", "--project", project];
/** What differs from the last commit in the tracked files: a run must not change it. */
const treeState = () => execSync("git diff HEAD", { cwd: root, maxBuffer: 1 << 28 }).toString();
const before = treeState();

const STEPS = [
  ["format and lint", [...bin("@biomejs/biome/bin/biome"), "check", "--error-on-warnings", "."]],
  ["types", [...bin("typescript/bin/tsc"), "-p", "."]],
  [
    "arrows",
    [
      ...bin("dependency-cruiser/bin/dependency-cruise.mjs"),
      "packages",
      "apps",
      "--config",
      ".dependency-cruiser.cjs",
    ],
  ],
  ["unused", [...bin("knip/bin/knip.js")]],
  ["build", build],
  ["unit", [...vitest("unit"), "--exclude", "tests/**"]],
  ["doc examples", [...vitest("unit"), "tests/"]],
  ["browser", vitest("journeys")],
  ["clean diff", () => (treeState() === before ? 0 : 1)],
];

function build() {
  ensureCli();
  ensureApp();
  return 0;
}

const wanted = process.argv[1]?.endsWith("verify.mjs") ? process.argv.slice(2) : [];
const chosen =
  wanted.length > 0 ? STEPS.filter(([name]) => wanted.some((word) => name.includes(word))) : STEPS;

if (chosen.length === 0) {
  console.error(`No such step. There are: ${STEPS.map(([name]) => name).join(", ")}.`);
  process.exit(2);
}

const results = chosen.map(([name, action]) => {
  console.log(`\n── ${name}`);
  const started = performance.now();
  const status = typeof action === "function" ? action() : runStep(action);
  return { name, passed: status === 0, seconds: ((performance.now() - started) / 1000).toFixed(1) };
});

function runStep([command, ...args]) {
  return spawnSync(command, args, { cwd: root, stdio: ["ignore", "inherit", "inherit"] }).status ?? 1;
}

console.log("");
for (const { name, passed, seconds } of results)
  console.log(`${passed ? "passed" : "FAILED"}  ${name.padEnd(16)} ${seconds.padStart(7)} s`);
const failed = results.filter((result) => !result.passed).length;
console.log(`\n${results.length - failed} passed, ${failed} failed`);
process.exit(failed > 0 ? 1 : 0);
