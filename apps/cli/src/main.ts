import { readFileSync, writeFileSync } from "node:fs";
import type { CliIo } from "./command-verb.ts";
import { runCli } from "./run.ts";

/** A failure names the file it met, which reading a folder does not by itself. */
function at<T>(path: string, use: () => T): T {
  try {
    return use();
  } catch (error) {
    throw Object.assign(error as Error, { path });
  }
}

const io: CliIo = {
  readText: (path) => at(path, () => readFileSync(path, "utf8")),
  readBytes: (path) => at(path, () => readFileSync(path)),
  writeText: (path, text) => at(path, () => writeFileSync(path, text)),
  writeBytes: (path, bytes) => at(path, () => writeFileSync(path, bytes)),
  print: (line) => process.stdout.write(`${line}\n`),
  complain: (line) => process.stderr.write(`${line}\n`),
};

// Whoever reads the output may stop early (`| head`): that is no failure.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit();
});

const WHY: Readonly<Record<string, (path: string) => string>> = {
  ENOENT: (path) => `There is no such file or folder: ${path}.`,
  EISDIR: (path) => `${path} is a folder: name a file in it.`,
  EACCES: (path) => `${path} may not be read or written here.`,
};

try {
  process.exitCode = await runCli(process.argv.slice(2), io);
} catch (error) {
  const { code, path } = error as NodeJS.ErrnoException;
  if (!code || !path) throw error;
  io.complain(WHY[code]?.(path) ?? `${path} cannot be used (${code}).`);
  process.exitCode = 2;
}
