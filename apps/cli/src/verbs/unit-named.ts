import { type Book, type UnitFile, unitFile, unitTitle } from "@tapside/records";
import type { Messages } from "@tapside/words";
import type { CliIo } from "../command-verb.ts";
import { bookWordsIn } from "../words/book-words.ts";

const MOST_LISTED = 12;

/** The only unit of a book, or the one named by id, serial number, name or site and name; undefined after a sentence that says which there are. */
export function unitNamed(
  book: Book,
  wanted: string | undefined,
  io: CliIo,
  words: Messages,
): UnitFile | undefined {
  const files = [...book.unit.keys()].flatMap((id) => unitFile(book, id) ?? []);
  const namesOf = ({ unit }: UnitFile) => [unit.id, unit.serial, unit.name];
  const found = files.filter(
    (file) => wanted === undefined || [...namesOf(file), unitTitle(file)].includes(wanted),
  );
  if (found.length === 1) return found[0];
  const titles = (found.length > 0 ? found : files).map(unitTitle).sort();
  const says = bookWordsIn(words.language);
  const listed = says.someOf(titles.slice(0, MOST_LISTED), titles.length);
  io.complain(found.length > 0 ? says.whichUnit(listed) : says.noSuchUnit(wanted ?? "", listed));
  return undefined;
}
