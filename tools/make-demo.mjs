// Writes the example files anew from the district's data and the model.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { runnerImport } from "vite";
import { root } from "./ensure-ready.mjs";

const { module } = await runnerImport(join(root, "examples/make-demo.ts"), {
  root,
  configFile: false,
  logLevel: "warn",
});
for (const [name, text] of Object.entries(module.examples()))
  writeFileSync(join(root, "examples", name), text);
