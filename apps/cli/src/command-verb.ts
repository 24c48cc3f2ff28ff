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
  readonly usage: string;
  readonly examples: readonly Example[];
  run(args: readonly string[], io: CliIo): Promise<number> | number;
}

/** Splits `-o FILE`, `--name` and `--name VALUE` (names in `takesValue`) from the plain arguments. */
export function options(args: readonly string[], takesValue: readonly string[]) {
  const plain: string[] = [];
  const named: Record<string, string> = {};
  for (let i = 0; i < args.length; i++) {
    const arg = args[i]!;
    if (!arg.startsWith("-") || /^-\d/.test(arg)) plain.push(arg);
    else if (takesValue.includes(arg)) named[arg] = args[++i] ?? "";
    else named[arg] = "yes";
  }
  return { plain, named };
}
