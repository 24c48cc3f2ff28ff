// Trains the diagnosis network anew from simulated cases and writes its weights: `nice -n 10 node tools/train-diagnosis.mjs`.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { runnerImport } from "vite";
import { root } from "./ensure-ready.mjs";

const { module } = await runnerImport(join(root, "tools/training/main.ts"), {
  root,
  configFile: false,
  logLevel: "warn",
});
const [cases = module.SHIPPED_PLAN.cases, samples = module.SHIPPED_PLAN.samples] = process.argv
  .slice(2)
  .map(Number);
const text = module.trainedModule({ ...module.SHIPPED_PLAN, cases, samples }, console.log);
writeFileSync(join(root, "packages/diagnosis/src/internal/weights.ts"), text);
