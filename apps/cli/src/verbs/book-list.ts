import { decodeText, listEdits, partsCsv, readList, workLinesCsv } from "@tapside/book";
import {
  type Book,
  bookOf,
  type Change,
  EMPTY_STATE,
  exportFile,
  fold,
  importFile,
  msOf,
  NO_STAMP,
  nextStamp,
  type Photo,
  SCHEMA,
  sha256Hex,
} from "@tapside/records";
import type { Messages } from "@tapside/words";
import type { CliIo, CommandVerb } from "../command-verb.ts";
import { wordsAsked } from "../language-option.ts";
import { sentence } from "../sentence.ts";
import { bookWordsIn } from "../words/book-words.ts";
import { bookIn } from "./book-file.ts";

const DEVICE = "00000000-0000-8000-8000-746170736964";

/** An id made from what it names, so that the same list always gives the same records. Source: RFC 9562, section 5.8 (version 8). */
function idOf(key: string): string {
  const hex = sha256Hex(new TextEncoder().encode(key));
  const variant = "89ab"[Number.parseInt(hex[16]!, 16) % 4];
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

interface Before {
  readonly changes: readonly Change[];
  readonly photos: readonly Photo[];
}

function before(path: string | undefined, io: CliIo, words: Messages): Before | undefined {
  if (!path) return { changes: [], photos: [] };
  const content = importFile(io.readText(path));
  if (content.kind === "known") return content.value;
  io.complain(`${path}: ${sentence(content, words)}`);
  return undefined;
}

export const importVerb: CommandVerb = {
  summary: "a CSV list of sites and units as a file the phone imports; refused rows are listed",
  ways: ["LIST.csv [-o OUT.tapside.json] [--into BOOK.tapside.json] [--language en|es] [--json]"],
  examples: [{ args: ["import", "examples/sites.csv"], prints: "4 new units" }],
  run({ plain, named }, io) {
    const words = wordsAsked(named["--language"], undefined, io);
    if (!words) return 2;
    const says = bookWordsIn(words.language);
    if (!plain[0]) {
      io.complain(says.nameAList);
      return 2;
    }
    const preview = readList(decodeText(io.readBytes(plain[0])));
    if (preview.kind !== "known") {
      io.complain(`${plain[0]}: ${sentence(preview, words)}`);
      return 2;
    }
    const old = before(named["--into"], io, words);
    if (!old) return 2;
    const { edits, ...count } = listEdits(bookOf(fold(EMPTY_STATE, old.changes)), preview.value, idOf);
    const changes = changesOf(edits, old.changes);
    if (named["-o"])
      io.writeText(named["-o"], exportFile({ changes: [...old.changes, ...changes], photos: old.photos }));
    const { refused, unknownColumns } = preview.value;
    if (named["--json"]) io.print(JSON.stringify({ ...count, refused, unknownColumns }));
    else io.print(says.counted(count.newSites, count.newUnits, count.knownUnits));
    for (const name of unknownColumns) io.complain(says.columnNotTaken(name));
    for (const row of refused) io.complain(says.lineRefused(row.line, words.refusal(row)));
    return refused.length > 0 ? 1 : 0;
  },
};

function changesOf(edits: ReturnType<typeof listEdits>["edits"], old: readonly Change[]): readonly Change[] {
  const newest =
    old
      .map((change) => change.at)
      .sort()
      .at(-1) ?? NO_STAMP;
  const wallMs = Math.max(Date.now(), newest === NO_STAMP ? 0 : msOf(newest));
  let at = newest;
  return edits.map((edit) => {
    at = nextStamp(at, wallMs);
    const wall = new Date(wallMs).toISOString();
    return {
      ...edit,
      id: idOf(`${at} ${edit.record}`),
      at,
      wall,
      device: DEVICE,
      schema: SCHEMA,
      why: "list",
    };
  });
}

const tableVerb = (
  words: string,
  summary: string,
  prints: string,
  table: (book: Book) => string,
): CommandVerb => ({
  summary,
  ways: ["FILE [-o OUT.csv]"],
  examples: [{ args: [...words.split(" "), "examples/larkmoor.tapside.json"], prints }],
  run({ plain, named }, io) {
    const book = bookIn(plain[0], io);
    if (!book) return 2;
    if (named["-o"]) io.writeText(named["-o"], table(book));
    else io.print(table(book).trimEnd());
    return 0;
  },
});

export const exportPartsVerb = tableVerb(
  "export parts",
  "every part of an exported file with lot and serial number as CSV",
  "carbon",
  partsCsv,
);

export const exportWorkVerb = tableVerb(
  "export work",
  "work lines of an exported file as CSV: minutes, parts, lots, reasons, order numbers; no prices",
  "order_number",
  workLinesCsv,
);
