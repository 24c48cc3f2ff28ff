import { unitFile } from "@tapside/records";
import { readingsCsv } from "@tapside/report/csv";
import type { CommandVerb } from "../command-verb.ts";
import { bookIn } from "./book-file.ts";

/** Every reading of an exported book as a table. */
export const exportReadingsVerb: CommandVerb = {
  summary: "every reading of an exported file as CSV",
  ways: ["FILE [-o OUT.csv]"],
  examples: [{ args: ["export", "readings", "examples/one-visit.tapside.json"], prints: "asFound,feedTds" }],
  run({ plain, named }, io) {
    const book = bookIn(plain[0], io);
    if (!book) return 2;
    const csv = readingsCsv([...book.unit.keys()].sort().flatMap((id) => unitFile(book, id) ?? []));
    if (named["-o"]) io.writeText(named["-o"], csv);
    else io.print(csv.trimEnd());
    return 0;
  },
};
