import { feedAmongNeighbours, meterLedger } from "@tapside/book";
import type { CommandVerb } from "../command-verb.ts";
import { bookIn } from "./book-file.ts";

const EXAMPLE = "examples/larkmoor.tapside.json";

const SAID = {
  same: "reads what its neighbours read",
  waterMoved: "reads what its neighbours read: the water has changed",
  thisOne: "its neighbours agree with each other, not with it: meter or tap",
  cannotTell: "one neighbour reads otherwise: water or meter",
} as const;

export const neighboursVerb: CommandVerb = {
  summary: "the last feed reading of every unit beside those of others on the same water",
  ways: ["FILE [--json]"],
  examples: [{ args: ["neighbours", EXAMPLE], prints: "µS/cm" }],
  run({ plain, named }, io) {
    const book = bookIn(plain[0], io);
    if (!book) return 2;
    const all = [...book.unit.keys()].flatMap((id) => {
      const among = feedAmongNeighbours(book, id);
      return among.kind === "known" ? [among.value] : [];
    });
    if (named["--json"]) io.print(JSON.stringify(all));
    else
      for (const { own, others, said } of all)
        io.print(
          `${own.on} ${own.site}, ${own.name}: ${own.ecUSPerCm.toFixed(0)} µS/cm; others ${others.map((one) => one.ecUSPerCm.toFixed(0)).join(", ")}: ${SAID[said]}`,
        );
    if (all.length === 0)
      io.complain("No unit has neighbours on the same water that were read within 14 days.");
    return 0;
  },
};

const LEDGER = {
  agrees: "agrees with other meters",
  high: "reads high against other meters",
  low: "reads low against other meters",
  cannotTell: "too few comparisons to say",
} as const;

export const metersVerb: CommandVerb = {
  summary: "the ledger of every meter of dissolved solids: its checks and how it reads beside other meters",
  ways: ["FILE [--json]"],
  examples: [{ args: ["meters", EXAMPLE], prints: "meter" }],
  run({ plain, named }, io) {
    const book = bookIn(plain[0], io);
    if (!book) return 2;
    const meters = [...book.instrument.values()].filter((one) => one.kind === "tds");
    const ledgers = meters.map(({ id, name = "" }) => ({ id, name, ...meterLedger(book, id) }));
    if (named["--json"]) io.print(JSON.stringify(ledgers));
    else
      for (const { name, said, off, lines } of ledgers)
        io.print(
          `${name}: ${lines.length} lines, ${LEDGER[said]}${off ? ` (${off.percent.toFixed(1)} ± ${off.U.toFixed(1)} %)` : ""}`,
        );
    if (meters.length === 0) io.complain("No meter of dissolved solids is in this file.");
    return 0;
  },
};
