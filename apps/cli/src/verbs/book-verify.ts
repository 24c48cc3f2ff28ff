import { canonicalJson, verifyRecord } from "@tapside/records";
import { type JudgedAgain, judgeAgain, type RecordContent } from "@tapside/report";
import type { Messages } from "@tapside/words";
import type { CliIo, CommandVerb } from "../command-verb.ts";
import { wordsAsked } from "../language-option.ts";
import { type BookWords, bookWordsIn } from "../words/book-words.ts";
import { bookIn } from "./book-file.ts";

interface Marked {
  readonly visit?: string;
  readonly revision?: number;
  readonly mark?: string;
  readonly json?: string;
}

interface Checked {
  readonly visit: string | undefined;
  readonly revision: number | undefined;
  readonly mark: string | undefined;
  /** Whether the text still has its mark. */
  readonly sound: boolean;
  /** Judged once more from the inputs it keeps; absent when the mark is broken or no inputs were kept. */
  readonly again?: JudgedAgain;
}

/** Re-checks marks and judges again from what was frozen; exit code 1 if a mark is broken or the same rules now say otherwise. */
export const verifyVerb: CommandVerb = {
  summary: "re-checks the mark of a service record and judges it again, or every one in an exported file",
  ways: ["FILE [--language en|es] [--json]"],
  notes: [
    "FILE: an exported book, or what report --json printed",
    "exit code 1: a mark is broken, or the same rules judge the kept inputs otherwise",
  ],
  examples: [{ args: ["verify", "examples/one-visit.tapside.json"], prints: "0 records" }],
  run({ plain, named }, io) {
    const words = wordsAsked(named["--language"], undefined, io);
    const records = words && marked(plain[0], io, words);
    if (!records) return 2;
    const results = records.map(checked);
    if (named["--json"]) io.print(JSON.stringify(results));
    else print(results, io, bookWordsIn(words.language));
    return results.some((one) => !one.sound || contradicts(one)) ? 1 : 0;
  },
};

function checked({ visit, revision, mark, json }: Marked): Checked {
  const kept = verifyRecord({ json: json ?? "", mark: mark ?? "" });
  const base = { visit, revision, mark, sound: kept.kind === "known" };
  if (kept.kind !== "known") return base;
  const again = judgeAgain(kept.value as unknown as RecordContent);
  return again.kind === "known" ? { ...base, again: again.value } : base;
}

/** Other rules may judge otherwise; the same rules from the same inputs may not. */
const contradicts = ({ again }: Checked): boolean =>
  again !== undefined && again.differs.length > 0 && again.rulesThen === again.rulesNow;

function print(results: readonly Checked[], io: CliIo, says: BookWords) {
  for (const one of results)
    io.print(
      says.record(
        one.sound,
        one.mark?.slice(0, 12) ?? "",
        one.visit ?? "",
        String(one.revision ?? ""),
        judgedAgain(one, says),
      ),
    );
  const broken = results.filter((one) => !one.sound).length;
  io.print(says.records(results.length, broken, results.filter(contradicts).length));
}

function judgedAgain({ again }: Checked, says: BookWords): string {
  if (!again) return says.noInputs;
  const { differs, rulesThen, rulesNow } = again;
  return differs.length === 0
    ? says.judgedTheSame
    : says.judgedOtherwise(rulesNow, rulesThen, differs.join(", "));
}

function marked(path: string | undefined, io: CliIo, words: Messages): readonly Marked[] | undefined {
  const single = path === undefined ? undefined : singleRecord(io.readText(path));
  if (single) return [single];
  const book = bookIn(path, io, words);
  return book && [...book.serviceRecord.values()];
}

/** A record that stands alone in its file; undefined for anything else. */
function singleRecord(text: string): Marked | undefined {
  try {
    const { mark, content } = JSON.parse(text) as { mark?: unknown; content?: Marked };
    if (typeof mark !== "string" || content === null || typeof content !== "object") return undefined;
    return { visit: content.visit, revision: content.revision, mark, json: canonicalJson(content) } as Marked;
  } catch {
    return undefined;
  }
}
