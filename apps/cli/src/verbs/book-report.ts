import { fileURLToPath } from "node:url";
import { neighboursOfVisit } from "@tapside/book";
import { countsInBook, saidCauses } from "@tapside/diagnosis";
import { freeze, inputsChangedSince, verifyRecord } from "@tapside/records";
import { buildRecord, type RecordContent } from "@tapside/report";
import { recordHtml } from "@tapside/report/html";
import { kitchenDay } from "@tapside/report/kitchen-day";
import { type PdfFonts, recordPdf } from "@tapside/report/pdf";
import { sizesInLanguage } from "@tapside/words/causes";
import { messagesIn } from "@tapside/words/every-language";
import { kitchenInLanguage } from "@tapside/words/kitchen";
import { type CliIo, type CommandVerb, complain } from "../command-verb.ts";
import { openVisit } from "./book-file.ts";

/** The bundle lies one folder nearer to the root than this source. */
const UP = import.meta.url.endsWith("/src/verbs/book-report.ts") ? "../../../../" : "../../../";

/** The text faces of every PDF. */
export const fonts = (io: CliIo): PdfFonts => {
  const bytes = (name: string) =>
    io.readBytes(fileURLToPath(new URL(`${UP}packages/pictures/fonts/${name}`, import.meta.url)));
  return { regular: bytes("B612-Regular.otf"), bold: bytes("B612-Bold.otf") };
};

/** Prints the service record of a visit. */
export const reportVerb: CommandVerb = {
  summary: "the service record of a visit as PDF or HTML",
  ways: ["FILE -o OUT.pdf|OUT.html [--visit ID] [--language en|es] [--json]"],
  notes: [
    "without a language: the one of the site's owner, else English",
    "a record already issued in the file is printed as it was frozen, in its own language",
  ],
  examples: [],
  async run(args, io) {
    const found = openVisit(args, io);
    if (!found) return 2;
    const out = found.named["-o"];
    if (!out) return complain(io, "Say where to: tapside report FILE -o OUT.pdf");
    if (!/\.(pdf|html)$/i.test(out)) return complain(io, `${out}: a record is written as .pdf or as .html.`);
    const record = await recordOf(found);
    if (!record) {
      io.complain("The record issued for this visit no longer has its mark; tapside verify says which.");
      return 1;
    }
    const { content, mark } = record;
    if (/\.html$/i.test(out)) io.writeText(out, recordHtml(content, mark));
    else io.writeBytes(out, await recordPdf(content, mark, fonts(io)));
    if (found.named["--json"]) io.print(JSON.stringify({ mark, content }));
    else io.complain(`${out}, record mark ${mark}`);
    if (inputsChangedSince(content.inputsMark, found.file, found.visit.id))
      io.complain(messagesIn(content.language).record.says.changedSince);
    return 0;
  },
};

/** The newest record issued for the visit as frozen, undefined if altered since; else one made now from the same records. */
async function recordOf(
  found: NonNullable<ReturnType<typeof openVisit>>,
): Promise<{ content: RecordContent; mark: string } | undefined> {
  const issued = [...found.book.serviceRecord.values()]
    .filter((record) => record.visit === found.visit.id && record.json && record.mark)
    .sort((a, b) => (b.revision ?? 0) - (a.revision ?? 0))[0];
  if (issued) {
    const sound = verifyRecord({ json: issued.json!, mark: issued.mark! });
    return sound.kind === "known"
      ? { content: sound.value as unknown as RecordContent, mark: issued.mark! }
      : undefined;
  }
  const content = buildRecord({
    file: found.file,
    neighbours: neighboursOfVisit(found.book, found.file, found.visit.id),
    visitId: found.visit.id,
    assessment: found.assessment,
    words: found.words,
    issuedAt: found.asOf,
    timeZone: found.timeZone,
    revision: 1,
    causes: sizesInLanguage(
      await saidCauses(found, countsInBook(found.book.causeCounts)),
      found.words.language,
    ),
    kitchenDay: kitchenDay(found.file, found, {
      words: found.words,
      kitchen: kitchenInLanguage(found.words.language),
    }),
    settings: found.settings,
  });
  return { content, mark: freeze(content).mark };
}
