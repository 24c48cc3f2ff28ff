import { readFileSync, writeFileSync } from "node:fs";
import type { CliIo } from "./command-verb.ts";
import { runCli } from "./run.ts";

const io: CliIo = {
  readText: (path) => readFileSync(path, "utf8"),
  readBytes: (path) => readFileSync(path),
  writeText: (path, text) => writeFileSync(path, text),
  writeBytes: (path, bytes) => writeFileSync(path, bytes),
  print: (line) => process.stdout.write(`${line}\n`),
  complain: (line) => process.stderr.write(`${line}\n`),
};

// Whoever reads the output may stop early (`| head`): that is no failure.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit();
});

try {
  process.exitCode = await runCli(process.argv.slice(2), io);
} catch (error) {
  const { code, path } = error as NodeJS.ErrnoException;
  if (!code || !path) throw error;
  io.complain(code === "ENOENT" ? `There is no file ${path}.` : `${path} cannot be used (${code}).`);
  process.exitCode = 2;
}
