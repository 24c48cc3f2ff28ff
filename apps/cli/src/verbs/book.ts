import { assess } from "@tapside/assessment";
import {
  type Book,
  bookOf,
  EMPTY_STATE,
  fold,
  freeze,
  importFile,
  type KeptVisit,
  unitFile,
  verifyRecord,
} from "@tapside/records";
import { buildRecord, type RecordContent } from "@tapside/report";
import { recordPdf } from "@tapside/report/pdf";
import { en, formatFigure } from "@tapside/words";
import { type CliIo, type CommandVerb, options } from "../command-verb.ts";
import { sentence } from "../sentence.ts";

const FONTS = new URL("../../../packages/pictures/fonts/", import.meta.url).pathname;

/** The book in an exported file, or undefined after a sentence that says why not. */
function bookIn(path: string | undefined, io: CliIo): Book | undefined {
  if (!path) {
    io.complain("Name an exported file.");
    return undefined;
  }
  const content = importFile(io.readText(path));
  if (content.kind === "known") return bookOf(fold(EMPTY_STATE, content.value.changes));
  io.complain(`${path}: ${content.kind === "refused" ? en.refusal(content) : sentence(content)}`);
  return undefined;
}

/** The visit named, else the newest. */
function visitIn(book: Book, id: string | undefined, io: CliIo): KeptVisit | undefined {
  const visits = [...book.visit.values()].sort((a, b) =>
    (a.startedAt ?? "") < (b.startedAt ?? "") ? 1 : -1,
  );
  const visit = id ? book.visit.get(id) : visits[0];
  if (!visit) io.complain(id ? `There is no visit ${id} in this file.` : "There is no visit in this file.");
  return visit;
}

/** The judgement of a visit as it stood when the visit ended, so that the same file always gives the same answer. */
function judged(book: Book, visit: KeptVisit) {
  const file = visit.unit ? unitFile(book, visit.unit) : undefined;
  if (!file) return undefined;
  const asOf = visit.endedAt ?? visit.startedAt ?? "1970-01-01T00:00:00Z";
  const timeZone = file.site.timeZone ?? "UTC";
  const settings = book.settings.get("settings") ?? {};
  return { file, asOf, timeZone, settings, assessment: assess(file, visit.id, { asOf, timeZone, settings }) };
}

function open(args: readonly string[], io: CliIo) {
  const { plain, named } = options(args, ["-o", "--visit"]);
  const book = bookIn(plain[0], io);
  const visit = book && visitIn(book, named["--visit"], io);
  const found = book && visit && judged(book, visit);
  if (visit && !found) io.complain("The visit's unit is not in this file.");
  return found && visit && book ? { ...found, visit, book, named } : undefined;
}

const assessVerb: CommandVerb = {
  summary: "judges a visit of an exported file",
  usage: "assess FILE [--visit ID] [--json]",
  examples: [{ args: ["assess", "examples/one-visit.tapside.json"], prints: "outside" }],
  run(args, io) {
    const found = open(args, io);
    if (!found) return 2;
    if (found.named["--json"]) {
      io.print(JSON.stringify(found.assessment));
      return 0;
    }
    for (const finding of found.assessment.findings) {
      const text = en.finding(finding);
      const figure = finding.figure && formatFigure(finding.figure);
      const number = figure
        ? ` ${figure.text}${figure.uText ? ` ± ${figure.uText}` : ""} ${finding.figure?.unit ?? ""}`
        : "";
      io.print(
        `${text.title} (${en.phases[finding.phase].toLowerCase()}): ${text.verdict}${number}${text.limit ? `; ${text.limit}` : ""}${text.reason ? `; ${text.reason}` : ""}`,
      );
    }
    for (const question of found.assessment.questions) io.print(`? ${en.question(question)}`);
    for (const task of found.assessment.tasks) io.print(`> ${en.taskTitle(task.id)} (${en.taskWhy(task)})`);
    return 0;
  },
};

const reportVerb: CommandVerb = {
  summary: "the service record of a visit as PDF",
  usage:
    "report FILE -o OUT.pdf [--visit ID] [--json]\n  a record already issued in the file is printed as it was frozen",
  examples: [],
  async run(args, io) {
    const found = open(args, io);
    if (!found) return 2;
    const out = found.named["-o"];
    if (!out) {
      io.complain("Say where to: tapside report FILE -o OUT.pdf");
      return 2;
    }
    const { content, mark } = recordOf(found);
    const fonts = {
      regular: io.readBytes(`${FONTS}B612-Regular.otf`),
      bold: io.readBytes(`${FONTS}B612-Bold.otf`),
    };
    io.writeBytes(out, await recordPdf(content, mark, fonts));
    if (found.named["--json"]) io.print(JSON.stringify({ mark, content }));
    else io.complain(`${out}, record mark ${mark}`);
    return 0;
  },
};

/** The newest record issued for the visit as frozen, else one made now from the same records. */
function recordOf(found: NonNullable<ReturnType<typeof open>>): { content: RecordContent; mark: string } {
  const issued = [...found.book.serviceRecord.values()]
    .filter((record) => record.visit === found.visit.id && record.json && record.mark)
    .sort((a, b) => (b.revision ?? 0) - (a.revision ?? 0))[0];
  if (issued) return { content: JSON.parse(issued.json!) as RecordContent, mark: issued.mark! };
  const content = buildRecord({
    file: found.file,
    visitId: found.visit.id,
    assessment: found.assessment,
    words: en,
    issuedAt: found.asOf,
    timeZone: found.timeZone,
    revision: 1,
    settings: found.settings,
  });
  return { content, mark: freeze(content).mark };
}

const verifyVerb: CommandVerb = {
  summary: "re-checks the mark of every service record in an exported file",
  usage: "verify FILE [--json]",
  examples: [{ args: ["verify", "examples/one-visit.tapside.json"], prints: "0 records" }],
  run(args, io) {
    const { plain, named } = options(args, []);
    const book = bookIn(plain[0], io);
    if (!book) return 2;
    const results = [...book.serviceRecord.values()].map((record) => ({
      visit: record.visit,
      revision: record.revision,
      mark: record.mark,
      sound: verifyRecord({ json: record.json ?? "", mark: record.mark ?? "" }).kind === "known",
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

/** Verbs that work on an exported book. */
export const bookVerbs: Readonly<Record<string, CommandVerb>> = {
  assess: assessVerb,
  report: reportVerb,
  verify: verifyVerb,
};
