import type { Messages } from "@tapside/words";
import { messagesIn } from "@tapside/words/every-language";
import PDFDocument from "pdfkit";
import type { Block, CellMark, RecordContent } from "./block.ts";
import { joined } from "./internal/joined.ts";
import { drawMark, drawValve } from "./internal/pdf-marks.ts";
import {
  artifact,
  type Doc,
  drawSvg,
  ink,
  ink2,
  LEFT,
  RIGHT,
  room,
  rule,
  type Structure,
  TEXT,
  tagged,
} from "./internal/pdf-pen.ts";
import { drawReadings } from "./internal/pdf-readings.ts";
import { writtenContent } from "./internal/written-content.ts";
import type { Draws } from "./internal/written-for.ts";

export interface PdfFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/**
 * The service record as a tagged PDF, A4. The same code on the phone and on the command line; the bytes differ between
 * platforms, so the record's mark stands on its text, not on this file.
 */
export async function recordPdf(frozen: RecordContent, mark: string, fonts: PdfFonts): Promise<Uint8Array> {
  const doc = blank(frozen, fonts);
  const { content, otherwise } = writtenContent(frozen, drawnBy(doc));
  const chunks: Uint8Array[] = [];
  const finished = new Promise<void>((resolve, reject) => {
    doc.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    doc.on("end", resolve);
    doc.on("error", reject);
  });
  const body = doc.struct("Document", {});
  doc.addStructure(body);
  head(doc, body, content);
  const { record: words } = messagesIn(content.language);
  for (const block of content.blocks) drawBlock(doc, body, block, words);
  if (otherwise.length > 0) lastLine(doc, body, words.writtenOtherwise(otherwise.join(", ")));
  lastLine(doc, body, words.wholeMark(mark));
  body.end();
  footers(doc, content, mark, words);
  doc.end();
  await finished;
  return joined(chunks);
}

function blank(content: RecordContent, fonts: PdfFonts): Doc {
  const doc = new PDFDocument({
    size: "A4",
    margins: { top: 40, left: LEFT, right: 40, bottom: 48 },
    // biome-ignore lint/suspicious/noExplicitAny: the types do not know that no built-in font is wanted
    font: null as any,
    lang: content.language ?? "en",
    tagged: true,
    displayTitle: true,
    bufferPages: true,
    pdfVersion: "1.7",
    info: {
      Title: `${content.title}, ${content.subtitle}`,
      Producer: "Tapside",
      CreationDate: new Date(content.issuedAt),
    },
  });
  doc.registerFont("regular", fonts.regular as unknown as ArrayBuffer);
  doc.registerFont("bold", fonts.bold as unknown as ArrayBuffer);
  return doc;
}

/** What the font of the text draws; the library keeps the opened font to itself. */
function drawnBy(doc: Doc): Draws {
  const { _font } = doc.font("regular") as unknown as {
    readonly _font: { readonly font: { hasGlyphForCodePoint(codePoint: number): boolean } };
  };
  return (codePoint) => _font.font.hasGlyphForCodePoint(codePoint);
}

function head(doc: Doc, body: Structure, content: RecordContent) {
  tagged(doc, body, "H1", () => doc.font("bold").fontSize(24).fillColor(ink).text(content.title, LEFT, 40));
  tagged(doc, body, "P", () =>
    doc.font("regular").fontSize(13).text(content.subtitle, LEFT, 72, { width: 330 }),
  );
  const below = doc.y;
  tagged(doc, body, "P", () =>
    content.aside.forEach((line, i) => {
      doc
        .font(i === 0 ? "bold" : "regular")
        .fontSize(10.5)
        .fillColor(i < 2 ? ink : ink2);
      doc.text(line, 380, 44 + i * 15, { width: RIGHT - 380, align: "right" });
    }),
  );
  const y = Math.max(98, below + 6, doc.y + 4);
  rule(doc, y, 4);
  doc.y = y + 11;
}

/** Text set beside the water, in a paragraph of its own. */
function paragraph(doc: Doc, body: Structure, text: string, type: "P" | "H2" = "P") {
  tagged(doc, body, type, () => doc.text(text, TEXT, doc.y, { width: RIGHT - TEXT, lineGap: 1 }));
}

/** Room for at least this text's height, so that no line stands alone over a page's end. */
function roomForText(doc: Doc, text: string, more = 0) {
  room(doc, Math.min(300, doc.heightOfString(text, { width: RIGHT - TEXT, lineGap: 1 })) + more);
}

type Words = Messages["record"];

/** Type of a page that hangs on a wall against type of a record. */
const LARGE = 1.15;

const DRAW: {
  readonly [K in Block["kind"]]: (
    doc: Doc,
    body: Structure,
    block: Extract<Block, { kind: K }>,
    words: Words,
  ) => void;
} = {
  heading(doc, body, { text }) {
    room(doc, 60);
    doc.font("bold").fontSize(14).fillColor(ink);
    doc.y += 6;
    paragraph(doc, body, text, "H2");
    doc.y += 4;
  },
  paragraph(doc, body, { text, strong, quiet, large }) {
    doc
      .font(strong ? "bold" : "regular")
      .fontSize((strong ? 15 : 10) * (large ? LARGE : 1))
      .fillColor(quiet ? ink2 : ink);
    roomForText(doc, text);
    paragraph(doc, body, text);
    doc.y += 4;
  },
  list(doc, body, { title, items, valves, large }) {
    if (items.length === 0) return;
    const times = large ? LARGE : 1;
    doc.font("regular").fontSize(10 * times);
    roomForText(doc, items[0]!, 24);
    doc
      .font("bold")
      .fontSize(11 * times)
      .fillColor(ink);
    doc.y += 4 * times;
    paragraph(doc, body, title, "H2");
    if (valves) drawValves(doc, body, valves);
    else listOf(doc, body, items, 10 * times);
  },
  figure(doc, body, { svg, alt, heightPt }) {
    room(doc, heightPt + 10);
    const y = doc.y + 4;
    tagged(doc, body, "Figure", () => drawSvg(doc, svg, TEXT, y, RIGHT - TEXT, heightPt), { alt });
    doc.y = y + heightPt + 6;
  },
  signature(doc, body, { text, path }, words) {
    room(doc, 60);
    const y = doc.y + 4;
    doc.font("regular").fontSize(10).fillColor(ink);
    tagged(doc, body, "P", () => doc.text(text, TEXT, y, { width: 280 }));
    const below = doc.y;
    if (path) {
      const svg = `<svg viewBox="0 0 358 120"><path d="${path}" fill="none" stroke="${ink}" stroke-width="3"/></svg>`;
      tagged(doc, body, "Figure", () => drawSvg(doc, svg, 400, y - 6, 150, 50), {
        alt: words.says.signature,
      });
    }
    doc.y = Math.max(below, path ? y + 48 : y + 16);
  },
  readings(doc, body, block, words) {
    drawReadings(doc, body, block, words.marks);
    legend(
      doc,
      body,
      words.marks,
      block.rows.flatMap((row) => [row.asFound.mark, row.asLeft.mark]),
    );
  },
  newPage(doc) {
    doc.addPage();
  },
};

function drawBlock<K extends Block["kind"]>(
  doc: Doc,
  body: Structure,
  block: Extract<Block, { kind: K }>,
  words: Words,
) {
  (DRAW[block.kind] as (doc: Doc, body: Structure, block: Block, words: Words) => void)(
    doc,
    body,
    block,
    words,
  );
}

/** Tagged as a list, so that a reader is told how many items there are. */
function listOf(doc: Doc, body: Structure, items: readonly string[], size: number) {
  const list = doc.struct("L" as "P", {});
  body.add(list);
  for (const item of items) {
    doc.font("regular").fontSize(size).fillColor(ink);
    roomForText(doc, item);
    const entry = doc.struct("LI" as "P", {});
    list.add(entry);
    tagged(doc, entry, "LBody", () => doc.text(item, TEXT, doc.y, { width: RIGHT - TEXT, lineGap: 1 }));
    entry.end();
    doc.y += 2;
  }
  list.end();
}

function drawValves(
  doc: Doc,
  body: Structure,
  valves: NonNullable<Extract<Block, { kind: "list" }>["valves"]>,
) {
  room(doc, 34);
  const y = doc.y + 16;
  const apart = (RIGHT - TEXT) / valves.length;
  doc.font("regular").fontSize(10).fillColor(ink);
  const bottoms = valves.map((valve, i) => {
    const x = TEXT + 6 + i * apart;
    tagged(doc, body, "P", () => {
      drawValve(doc, valve.open, x, y);
      doc.fillColor(ink).text(valve.text, x + 14, y - 6, { width: apart - 20 });
    });
    return doc.y;
  });
  doc.y = Math.max(y + 18, ...bottoms.map((bottom) => bottom + 6));
}

/** Names the marks that were used, and only those. */
function legend(doc: Doc, body: Structure, names: Words["marks"], used: readonly CellMark[]) {
  const marks = (["outside", "notExpected", "tooClose"] as const).filter((mark) => used.includes(mark));
  if (marks.length === 0) return;
  const y = doc.y;
  marks.forEach((mark, i) => {
    tagged(doc, body, "P", () => {
      drawMark(doc, mark, TEXT + 6 + i * 120, y + 6);
      doc.font("regular").fontSize(9.5).fillColor(ink2);
      doc.text(names[mark], TEXT + 20 + i * 120, y, { lineBreak: false });
    });
  });
  doc.y = y + 18;
}

function lastLine(doc: Doc, body: Structure, text: string) {
  doc.font("regular").fontSize(8.5).fillColor(ink2);
  roomForText(doc, text, 4);
  doc.y += 4;
  paragraph(doc, body, text);
}

function footers(doc: Doc, content: RecordContent, mark: string, words: Words) {
  const { start, count } = doc.bufferedPageRange();
  const short = mark.slice(0, 12).replace(/(.{4})(?=.)/g, "$1 ");
  for (let i = start; i < start + count; i++) {
    doc.switchToPage(i);
    doc.page.margins.bottom = 0;
    artifact(
      doc,
      () => {
        doc.font("regular").fontSize(9).fillColor(ink2);
        doc.text(words.shortMark(short), LEFT, 806, { lineBreak: false });
        doc.text(words.page(content.revision, i + 1 - start, count), RIGHT - 200, 806, {
          width: 200,
          align: "right",
          lineBreak: false,
        });
      },
      "Pagination",
    );
  }
}
