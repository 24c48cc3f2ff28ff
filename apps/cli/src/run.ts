import { argumentsOf } from "./arguments.ts";
import { type CliIo, type CommandVerb, complain } from "./command-verb.ts";
import { VERBS } from "./registry.ts";

/** Runs the command line; resolves to the exit code. */
export async function runCli(args: readonly string[], io: CliIo): Promise<number> {
  const found = verbOf(args);
  if (found && args.includes("--help")) return help(found.name, found.verb, io);
  if (found) return call(found.verb, args.slice(found.words), io);
  if (args.length === 0 || args[0] === "--help") return overview(io);
  return complain(io, `There is no "${args[0]}". tapside --help lists what there is.`);
}

function call(verb: CommandVerb, args: readonly string[], io: CliIo): Promise<number> | number {
  const read = argumentsOf(args, verb.ways);
  return typeof read === "string" ? complain(io, read) : verb.run(read, io);
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
  io.print(`tapside ${name}: ${verb.summary}\n`);
  for (const way of verb.ways) io.print(`  tapside ${name} ${way}`);
  for (const note of verb.notes ?? []) io.print(`  ${note}`);
  for (const example of verb.examples)
    io.print(`\n  node bin/tapside.mjs ${example.args.join(" ")}\n    … ${example.prints} …`);
  return 0;
}
