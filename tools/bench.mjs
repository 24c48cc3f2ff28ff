// Builds and runs every bench/*.ts in turn; each prints its figures as JSON beside a calibration loop of the same run.
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { ensureInstalled, root } from "./ensure-ready.mjs";

ensureInstalled();
const { runnerImport } = await import("vite");
const wanted = process.argv.slice(2);
for (const file of readdirSync(join(root, "bench")).sort()) {
  if (!file.endsWith(".ts") || (wanted.length > 0 && !wanted.some((word) => file.includes(word)))) continue;
  console.log(`\n── ${file}`);
  await runnerImport(join(root, "bench", file), { root, configFile: false, logLevel: "warn" });
}
