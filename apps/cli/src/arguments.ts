/** What stands after a verb: plain words, and options by name (a flag's value is "yes"). */
export interface Arguments {
  readonly plain: readonly string[];
  readonly named: Readonly<Record<string, string>>;
}

interface Takes {
  /** How many plain words at most. */
  readonly plain: number;
  /** Options by name: whether a value follows. */
  readonly options: ReadonlyMap<string, boolean>;
}

const isOption = (word: string): boolean => /^--?[a-z]/.test(word);

/** What one way of calling a verb takes, as its usage shows it: `FILE -o OUT.csv [--json]`. */
function takesIn(way: string): Takes {
  const words = way
    .split(/\s+/)
    .map((word) => ({ text: word.replace(/^\[|\]$/g, ""), ends: word.endsWith("]") }));
  const options = new Map<string, boolean>();
  let plain = 0;
  for (let i = 0; i < words.length; i++) {
    const { text, ends } = words[i]!;
    const next = words[i + 1]?.text;
    const valued = !ends && next !== undefined && !isOption(next) && !words[i + 1]!.text.startsWith("[");
    if (!isOption(text)) plain++;
    else {
      options.set(text, valued);
      if (valued) i++;
    }
  }
  return { plain, options };
}

/** All that a verb takes, in any of the ways of calling it. */
function takesOf(ways: readonly string[]): Takes {
  const each = ways.map(takesIn);
  return {
    plain: Math.max(...each.map((one) => one.plain)),
    options: new Map(each.flatMap((one) => [...one.options])),
  };
}

/** The arguments of a verb called in one of the ways its usage shows; else a sentence that says what is too much or absent. */
export function argumentsOf(args: readonly string[], ways: readonly string[]): Arguments | string {
  const takes = takesOf(ways);
  const plain: string[] = [];
  const named: Record<string, string> = {};
  for (let i = 0; i < args.length; i++) {
    const word = args[i]!;
    if (!isOption(word)) plain.push(word);
    else if (!takes.options.has(word)) return unknownOption(word, takes);
    else if (takes.options.get(word) === false) named[word] = "yes";
    else if (args[i + 1] === undefined || isOption(args[i + 1]!)) return `${word} wants a value after it.`;
    else named[word] = args[++i]!;
  }
  if (plain.length > takes.plain)
    return `"${plain[takes.plain]}" is one too many. A name with spaces wants quotation marks.`;
  return { plain, named };
}

const unknownOption = (word: string, { options }: Takes): string =>
  options.size === 0
    ? `There is no ${word} here: no option is taken.`
    : `There is no ${word} here, only ${[...options.keys()].join(", ")}.`;
