import {
  type Counted,
  calendarFile,
  carryInVan,
  carryList,
  dueList,
  monthlyCsv,
  monthlySummary,
  plannedFor,
  vanStock,
} from "@tapside/book";
import { countsInBook, partsForStops } from "@tapside/diagnosis";
import { unitTitle } from "@tapside/records";
import type { Messages } from "@tapside/words";
import { causesInLanguage } from "@tapside/words/causes";
import type { Arguments } from "../arguments.ts";
import type { CliIo, CommandVerb } from "../command-verb.ts";
import { dayAsked } from "../day-option.ts";
import { wordsAsked } from "../language-option.ts";
import { runThrough } from "../run-through.ts";
import { bookWordsIn } from "../words/book-words.ts";
import { bookIn } from "./book-file.ts";

const EXAMPLE = "examples/larkmoor.tapside.json";

/** What is due in the book an argument list names, by the day it names or today. */
function dueIn({ plain, named }: Arguments, io: CliIo) {
  const words = wordsAsked(named["--language"], undefined, io);
  if (!words) return undefined;
  const day = dayAsked(named["--on"], words, io);
  if (!day) return undefined;
  const book = bookIn(plain[0], io, words);
  return book && { book, day, named, words, rows: dueList(book, day) };
}

export const dueVerb: CommandVerb = {
  summary: "what is due in an exported file, by date or litres, and the parts to carry",
  ways: ["FILE [--on 2026-11-25] [--language en|es] [--json]"],
  examples: [{ args: ["due", EXAMPLE, "--on", "2026-11-25"], prints: "due by" }],
  run(args, io) {
    const due = dueIn(args, io);
    if (!due) return 2;
    const { rows, day, named, words } = due;
    const says = bookWordsIn(words.language);
    const wanted = rows.filter((row) => row.overdue);
    const carry = carryInVan(carryList(wanted, day), vanStock(due.book));
    if (named["--json"]) {
      const plain = rows.map(({ unit, file, reasons, overdue }) => ({
        unit,
        site: file.site.name,
        name: file.unit.name,
        reasons,
        overdue,
      }));
      io.print(JSON.stringify({ day, rows: plain, carry }));
      return 0;
    }
    for (const row of rows) {
      const [first] = row.reasons;
      const title = unitTitle(row.file);
      io.print(
        `${(first?.on ?? "–").padEnd(11)}${title}: ${first ? words.dueReason(first) : says.nothingDue}`,
      );
    }
    for (const { count, role, inVan, short } of carry)
      io.print(
        [says.carry(count, roleName(role, words)), inVan !== undefined && says.inVan(inVan, short ?? 0)]
          .filter(Boolean)
          .join("; "),
      );
    return 0;
  },
};

const roleName = (role: string, { roles }: Messages): string =>
  (roles as Readonly<Record<string, string>>)[role] ?? role;

export const calendarVerb: CommandVerb = {
  summary: "what is due in an exported file as an iCalendar file (RFC 5545)",
  ways: ["FILE [-o OUT.ics] [--on 2026-11-25] [--language en|es]"],
  examples: [{ args: ["calendar", EXAMPLE, "--on", "2026-11-25"], prints: "BEGIN:VEVENT" }],
  run(args, io) {
    const due = dueIn(args, io);
    if (!due) return 2;
    const text = calendarFile(due.rows, `${due.day}T00:00:00Z`, {
      title: ({ file }) => unitTitle(file),
      reason: due.words.dueReason,
    });
    if (due.named["-o"]) io.writeText(due.named["-o"], text);
    else io.print(text.trimEnd());
    return 0;
  },
};

/** What happened in a month and what stands open: one table for a chain or the whole company. */
export const monthVerb: CommandVerb = {
  summary:
    "a month over all sites, or those of a chain: visits, findings, parts, what is due, open, bypassed",
  ways: ["FILE [--month 2026-11] [--chain NAME] [-o OUT.csv] [--on 2026-11-25] [--language en|es]"],
  examples: [{ args: ["month", EXAMPLE, "--month", "2026-03", "--on", "2026-04-01"], prints: "visits" }],
  run(args, io) {
    const due = dueIn(args, io);
    if (!due) return 2;
    const { named, day, rows, book, words } = due;
    const says = bookWordsIn(words.language);
    const month = named["--month"] ?? day.slice(0, 7);
    if (!/^\d{4}-(0[1-9]|1[0-2])$/.test(month)) {
      io.complain(says.noMonth(month));
      return 2;
    }
    const asked = {
      month,
      rows,
      today: day,
      chain: named["--chain"],
      settings: book.settings,
    };
    const summary = runThrough(monthlySummary(asked));
    if (named["-o"]) io.writeText(named["-o"], monthlyCsv(summary));
    const count = (all: readonly Counted[], name: (id: string) => string) =>
      all.map((one) => `${one.count} × ${name(one.id)}`).join(", ") || "–";
    const kinds: Readonly<Record<string, string>> = words.visitKinds;
    const title = (id: string) =>
      words.finding({ id, phase: "asFound", verdict: "outside", consequence: 0 }).title;
    const line = (of: keyof typeof says.month, text: string) =>
      io.print(`${says.month[of].padEnd(11)}${text}`);
    io.print(says.monthOf(month, summary.sites, summary.visits.length));
    line(
      "visits",
      count(summary.byKind, (id) => kinds[id] ?? id),
    );
    line("outside", count(summary.findings, title));
    line(
      "parts",
      count(summary.partsUsed, (id) => roleName(id, words)),
    );
    line("due", says.dueCount(summary.overdue.length, summary.dueSoon.length));
    line("open", says.openCount(summary.openPoints.length, summary.bypassed.length));
    return 0;
  },
};

export const vanVerb: CommandVerb = {
  summary: "what is in the van, used since the last count, ordered, and short of what is due",
  ways: ["FILE [--on 2026-11-25] [--language en|es] [--json]"],
  examples: [{ args: ["van", EXAMPLE, "--on", "2026-11-25"], prints: "due within" }],
  run(args, io) {
    const due = dueIn(args, io);
    if (!due) return 2;
    const { words } = due;
    const says = bookWordsIn(words.language);
    const stock = vanStock(due.book);
    const carry = carryInVan(carryList(due.rows, due.day), stock);
    if (due.named["--json"]) {
      io.print(JSON.stringify({ stock, carry }));
      return 0;
    }
    for (const { role, inVan, used, ordered, countAgain } of stock)
      io.print(says.vanLine(roleName(role, words), inVan, used, ordered, countAgain));
    for (const { role, count, short, toOrder } of carry)
      io.print(says.dueSoon(count, roleName(role, words), short, toOrder));
    if (stock.length === 0) io.complain(says.vanNotCounted);
    return 0;
  },
};

export const likelyVerb: CommandVerb = {
  summary:
    "parts the visits planned for a day, else everything overdue, are likely to want, by what was last read",
  ways: ["FILE [--on 2026-11-25] [--language en|es] [--json]"],
  examples: [{ args: ["likely", EXAMPLE, "--on", "2026-11-25"], prints: "%" }],
  async run(args, io) {
    const due = dueIn(args, io);
    if (!due) return 2;
    const { words } = due;
    const says = bookWordsIn(words.language);
    const planned = new Set(plannedFor(due.book, due.day).map((plan) => plan.unit));
    const stops = due.rows.filter((row) => (planned.size > 0 ? planned.has(row.unit) : row.overdue));
    const wanted = await partsForStops(
      stops.map((row) => row.file),
      countsInBook(due.book.causeCounts),
    );
    const { parts, percent } = causesInLanguage(words.language);
    if (due.named["--json"]) io.print(JSON.stringify({ day: due.day, stops: stops.length, wanted }));
    else
      for (const one of wanted)
        io.print(says.likely(percent(one.probability), parts[one.part], stops.length));
    if (wanted.length === 0) io.complain(says.noneLikely);
    return 0;
  },
};
