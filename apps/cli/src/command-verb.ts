import type { Arguments } from "./arguments.ts";

/** What a verb may touch of the machine. */
export interface CliIo {
  readText(path: string): string;
  readBytes(path: string): Uint8Array;
  writeText(path: string, text: string): void;
  writeBytes(path: string, bytes: Uint8Array): void;
  print(line: string): void;
  complain(line: string): void;
}

/** An example shown in the help and run by a test, from the project's root. */
export interface Example {
  readonly args: readonly string[];
  /** A part of what it prints. */
  readonly prints: string;
}

/** A verb with its own arguments. `run` resolves to the exit code. */
export interface CommandVerb {
  readonly summary: string;
  /** What stands after the verb, in every way it may be called: `FILE [-o OUT.csv] [--json]`. Nothing else is taken. */
  readonly ways: readonly string[];
  /** What a reader of the help should know besides. */
  readonly notes?: readonly string[];
  readonly examples: readonly Example[];
  run(args: Arguments, io: CliIo): Promise<number> | number;
}

/** Says what is wrong with how a verb was called; the exit code of that. */
export function complain(io: CliIo, line: string): number {
  io.complain(line);
  return 2;
}
