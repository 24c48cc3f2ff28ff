import { feedAmongNeighbours, meterLedger } from "@tapside/book";
import { inSign, type Messages } from "@tapside/words";
import type { CommandVerb } from "../command-verb.ts";
import { wordsAsked } from "../language-option.ts";
import { bookWordsIn } from "../words/book-words.ts";
import { bookIn } from "./book-file.ts";

const offText = (off: { readonly percent: number; readonly U: number }, { decimalSign }: Messages): string =>
  [off.percent, off.U].map((part) => inSign(part.toFixed(1), decimalSign)).join(" ± ");

const EXAMPLE = "examples/larkmoor.tapside.json";

export const neighboursVerb: CommandVerb = {
  summary: "the last feed reading of every unit beside those of others on the same water",
  ways: ["FILE [--language en|es] [--json]"],
  examples: [{ args: ["neighbours", EXAMPLE], prints: "µS/cm" }],
  run({ plain, named }, io) {
    const words = wordsAsked(named["--language"], undefined, io);
    const book = words && bookIn(plain[0], io, words);
    if (!book) return 2;
    const says = bookWordsIn(words.language);
    const all = [...book.unit.keys()].flatMap((id) => {
      const among = feedAmongNeighbours(book, id);
      return among.kind === "known" ? [among.value] : [];
    });
    if (named["--json"]) io.print(JSON.stringify(all));
    else
      for (const { own, others, said } of all)
        io.print(
          says.neighbour(
            own.on,
            `${own.site}, ${own.name}`,
            own.ecUSPerCm.toFixed(0),
            others.map((one) => one.ecUSPerCm.toFixed(0)).join(", "),
            says.neighbours[said],
          ),
        );
    if (all.length === 0) io.complain(says.noNeighbours);
    return 0;
  },
};

export const metersVerb: CommandVerb = {
  summary: "the ledger of every meter of dissolved solids: its checks and how it reads beside other meters",
  ways: ["FILE [--language en|es] [--json]"],
  examples: [{ args: ["meters", EXAMPLE], prints: "meter" }],
  run({ plain, named }, io) {
    const words = wordsAsked(named["--language"], undefined, io);
    const book = words && bookIn(plain[0], io, words);
    if (!book) return 2;
    const says = bookWordsIn(words.language);
    const meters = [...book.instrument.values()].filter((one) => one.kind === "tds");
    const ledgers = meters.map(({ id, name = "" }) => ({ id, name, ...meterLedger(book, id) }));
    if (named["--json"]) io.print(JSON.stringify(ledgers));
    else
      for (const { name, said, off, lines } of ledgers)
        io.print(says.meter(name, lines.length, says.meters[said], off ? offText(off, words) : ""));
    if (meters.length === 0) io.complain(says.noMeters);
    return 0;
  },
};
