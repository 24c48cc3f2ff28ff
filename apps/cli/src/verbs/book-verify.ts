import { canonicalJson, verifyRecord } from "@tapside/records";
import { type CliIo, type CommandVerb, options } from "../command-verb.ts";
import { bookIn } from "./book-file.ts";

interface Marked {
  readonly visit?: string;
  readonly revision?: number;
  readonly mark?: string;
  readonly json?: string;
}

/** Re-checks marks; exit code 1 if any is broken. */
export const verifyVerb: CommandVerb = {
  summary: "re-checks the mark of a service record, or of every one in an exported file",
  usage: "verify FILE [--json]\n  FILE: an exported book, or what report --json printed",
  examples: [{ args: ["verify", "examples/one-visit.tapside.json"], prints: "0 records" }],
  run(args, io) {
    const { plain, named } = options(args, []);
    const records = marked(plain[0], io);
    if (!records) return 2;
    const results = records.map(({ visit, revision, mark, json }) => ({
      visit,
      revision,
      mark,
      sound: verifyRecord({ json: json ?? "", mark: mark ?? "" }).kind === "known",
    }));
    const broken = results.filter((one) => !one.sound);
    if (named["--json"]) io.print(JSON.stringify(results));
    else {
      for (const one of results)
        io.print(
          `${one.sound ? "sound " : "BROKEN"} ${one.mark?.slice(0, 12)} visit ${one.visit}, revision ${one.revision}`,
        );
      io.print(`${results.length} records, ${broken.length} broken`);
    }
    return broken.length > 0 ? 1 : 0;
  },
};

function marked(path: string | undefined, io: CliIo): readonly Marked[] | undefined {
  const single = path === undefined ? undefined : singleRecord(io.readText(path));
  if (single) return [single];
  const book = bookIn(path, io);
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
