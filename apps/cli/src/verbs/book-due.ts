import { calendarFile, carryList, dueList } from "@tapside/book";
import { en } from "@tapside/words/en";
import { type CliIo, type CommandVerb, options } from "../command-verb.ts";
import { bookIn } from "./book-file.ts";

const EXAMPLE = "examples/larkmoor.tapside.json";

/** What is due in the book an argument list names, by the day it names or today. */
function dueIn(args: readonly string[], io: CliIo) {
  const { plain, named } = options(args, ["-o", "--on"]);
  const day = named["--on"] ?? new Date().toISOString().slice(0, 10);
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day) || Number.isNaN(Date.parse(day))) {
    io.complain(`"${day}" is no day written as 2026-11-25.`);
    return undefined;
  }
  const book = bookIn(plain[0], io);
  return book && { book, day, named, rows: dueList(book, day) };
}

export const dueVerb: CommandVerb = {
  summary: "what is due in an exported file, by date or litres, and the parts to carry",
  usage: "due FILE [--on 2026-11-25] [--json]",
  examples: [{ args: ["due", EXAMPLE, "--on", "2026-11-25"], prints: "due by" }],
  run(args, io) {
    const due = dueIn(args, io);
    if (!due) return 2;
    const { rows, day, named } = due;
    const wanted = rows.filter((row) => row.overdue);
    const carry = carryList(wanted, day);
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
      const title = [row.file.site.name, row.file.unit.name].filter(Boolean).join(", ");
      io.print(`${(first?.on ?? "–").padEnd(11)}${title}: ${first ? en.dueReason(first) : "nothing due"}`);
    }
    for (const line of carry) io.print(`carry ${line.count} × ${roleName(line.role)}`);
    return 0;
  },
};

const roleName = (role: string): string => (en.roles as Readonly<Record<string, string>>)[role] ?? role;

export const calendarVerb: CommandVerb = {
  summary: "what is due in an exported file as an iCalendar file (RFC 5545)",
  usage: "calendar FILE [-o OUT.ics] [--on 2026-11-25]",
  examples: [{ args: ["calendar", EXAMPLE, "--on", "2026-11-25"], prints: "BEGIN:VEVENT" }],
  run(args, io) {
    const due = dueIn(args, io);
    if (!due) return 2;
    const text = calendarFile(due.rows, `${due.day}T00:00:00Z`, {
      title: ({ file }) => [file.site.name, file.unit.name].filter(Boolean).join(", "),
      reason: en.dueReason,
    });
    if (due.named["-o"]) io.writeText(due.named["-o"], text);
    else io.print(text.trimEnd());
    return 0;
  },
};
