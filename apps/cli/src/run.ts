import type { CliIo, CommandVerb } from "./command-verb.ts";
import { VERBS } from "./registry.ts";

/** Runs the command line; resolves to the exit code. */
export async function runCli(args: readonly string[], io: CliIo): Promise<number> {
  const found = verbOf(args);
  if (found && args.includes("--help")) return help(found.name, found.verb, io);
  if (found) return found.verb.run(args.slice(found.words), io);
  if (args.length === 0 || args[0] === "--help") return overview(io);
  io.complain(`There is no "${args[0]}". tapside --help lists what there is.`);
  return 2;
}

/** The longest run of leading words that names a verb. */
function verbOf(args: readonly string[]) {
  for (const words of [2, 1]) {
    const name = args.slice(0, words).join(" ");
    const verb = Object.hasOwn(VERBS, name) ? VERBS[name] : undefined;
    if (verb && args.length >= words) return { name, verb, words };
  }
  return undefined;
}

function overview(io: CliIo): number {
  io.print("tapside VERB …   (tapside VERB --help says more)\n");
  for (const [name, verb] of Object.entries(VERBS)) io.print(`  ${name.padEnd(16)} ${verb.summary}`);
  return 0;
}

function help(name: string, verb: CommandVerb, io: CliIo): number {
  io.print(`tapside ${name}: ${verb.summary}\n\n  tapside ${verb.usage}`);
  for (const example of verb.examples)
    io.print(`\n  node bin/tapside.mjs ${example.args.join(" ")}\n    … ${example.prints} …`);
  return 0;
}
