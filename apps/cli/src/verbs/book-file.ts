import { assess } from "@tapside/assessment";
import { type Book, bookOf, EMPTY_STATE, fold, importFile, type KeptVisit, unitFile } from "@tapside/records";
import type { Messages } from "@tapside/words";
import { en } from "@tapside/words/en";
import type { Arguments } from "../arguments.ts";
import type { CliIo } from "../command-verb.ts";
import { wordsAsked } from "../language-option.ts";
import { sentence } from "../sentence.ts";
import { bookWordsIn } from "../words/book-words.ts";

/** The book in an exported file, or undefined after a sentence that says why not. */
export function bookIn(path: string | undefined, io: CliIo, words: Messages = en): Book | undefined {
  if (!path) {
    io.complain(bookWordsIn(words.language).nameAFile);
    return undefined;
  }
  const content = importFile(io.readText(path));
  if (content.kind === "known") return bookOf(fold(EMPTY_STATE, content.value.changes));
  io.complain(`${path}: ${sentence(content, words)}`);
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
export function judged(book: Book, visit: KeptVisit) {
  const file = visit.unit ? unitFile(book, visit.unit) : undefined;
  if (!file) return undefined;
  const asOf = visit.endedAt ?? visit.startedAt ?? "1970-01-01T00:00:00Z";
  const timeZone = file.site.timeZone ?? "UTC";
  const settings = book.settings.get("settings") ?? {};
  return { file, asOf, timeZone, settings, assessment: assess(file, visit.id, { asOf, timeZone, settings }) };
}

/** The visit an argument list names, judged; undefined after a sentence that says why not. */
export function openVisit({ plain, named }: Arguments, io: CliIo) {
  const book = bookIn(plain[0], io);
  const visit = book && visitIn(book, named["--visit"], io);
  const found = book && visit && judged(book, visit);
  if (visit && !found) io.complain("The visit's unit is not in this file.");
  const words = found && wordsAsked(named["--language"], found.file.site.language, io);
  return found && visit && book && words ? { ...found, visit, book, named, words } : undefined;
}
