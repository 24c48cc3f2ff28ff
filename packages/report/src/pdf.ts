import { COLOURS, numeralSvg } from "@tapside/pictures";
import PDFDocument from "pdfkit";
import svgToPdf from "svg-to-pdfkit";
import type { Block, CellMark, ReadingRow, RecordContent } from "./block.ts";

export interface PdfFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

type Doc = PDFKit.PDFDocument;

const LEFT = 40;
const RIGHT = 555;
const BOTTOM = 782;
const { ink, ink2 } = COLOURS.paper;

/**
 * The service record as a tagged PDF, A4. The same code on the phone and on the command line; the bytes differ between
 * platforms, so the record's mark stands on its text, not on this file.
 */
export async function recordPdf(content: RecordContent, mark: string, fonts: PdfFonts): Promise<Uint8Array> {
  const doc = new PDFDocument({
    size: "A4",
    margins: { top: 40, left: LEFT, right: 40, bottom: 48 },
    // biome-ignore lint/suspicious/noExplicitAny: the types do not know that no built-in font is wanted
    font: null as any,
    lang: "en",
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
  const chunks: Uint8Array[] = [];
  const finished = new Promise<void>((resolve, reject) => {
    doc.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    doc.on("end", resolve);
    doc.on("error", reject);
  });
  const body = doc.struct("Document", {});
  doc.addStructure(body);
  head(doc, body, content);
  for (const block of content.blocks) drawBlock(doc, body, block);
  body.end();
  footers(doc, content, mark);
  doc.end();
  await finished;
  return joined(chunks);
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}

type Structure = PDFKit.PDFStructureElement;

/** Draws inside a structure element of its own, so that the tags follow the reading order. */
function tagged(doc: Doc, parent: Structure, type: string, draw: () => void, options: object = {}) {
  parent.add(doc.struct(type as "P", options, [draw]));
}

function head(doc: Doc, body: Structure, content: RecordContent) {
  tagged(doc, body, "H1", () => doc.font("bold").fontSize(24).fillColor(ink).text(content.title, LEFT, 40));
  tagged(doc, body, "P", () =>
    doc.font("regular").fontSize(13).text(content.subtitle, LEFT, 72, { width: 340 }),
  );
  tagged(doc, body, "P", () =>
    content.aside.forEach((line, i) => {
      doc
        .font(i === 0 ? "bold" : "regular")
        .fontSize(10.5)
        .fillColor(i < 2 ? ink : ink2);
      doc.text(line, 380, 44 + i * 15, { width: RIGHT - 380, align: "right" });
    }),
  );
  rule(doc, Math.max(100, doc.y + 8), 4);
  doc.y = Math.max(100, doc.y + 8) + 12;
}

function rule(doc: Doc, y: number, width: number) {
  doc.markContent("Artifact", { type: "Layout" });
  doc.moveTo(LEFT, y).lineTo(RIGHT, y).lineWidth(width).strokeColor(ink).stroke();
  doc.endMarkedContent();
}

function room(doc: Doc, height: number) {
  if (doc.y + height > BOTTOM) doc.addPage();
}

const DRAW: {
  readonly [K in Block["kind"]]: (doc: Doc, body: Structure, block: Extract<Block, { kind: K }>) => void;
} = {
  heading(doc, body, { text }) {
    room(doc, 60);
    doc.y += 6;
    tagged(doc, body, "H2", () =>
      doc
        .font("bold")
        .fontSize(14)
        .fillColor(ink)
        .text(text, LEFT, doc.y, { width: RIGHT - LEFT }),
    );
    doc.y += 2;
  },
  paragraph(doc, body, { text, strong, quiet }) {
    room(doc, 30);
    tagged(doc, body, "P", () =>
      doc
        .font(strong ? "bold" : "regular")
        .fontSize(strong ? 17 : 10.5)
        .fillColor(quiet ? ink2 : ink)
        .text(text, LEFT, doc.y, { width: RIGHT - LEFT, lineGap: 2 }),
    );
    doc.y += 4;
  },
  list(doc, body, { title, items }) {
    if (items.length === 0) return;
    room(doc, 40);
    doc.y += 4;
    tagged(doc, body, "H2", () => doc.font("bold").fontSize(11.5).fillColor(ink).text(title, LEFT, doc.y));
    for (const item of items) {
      room(doc, 20);
      tagged(doc, body, "P", () =>
        doc
          .font("regular")
          .fontSize(10.5)
          .fillColor(ink)
          .text(`– ${item}`, LEFT + 8, doc.y, { width: RIGHT - LEFT - 8, lineGap: 1 }),
      );
    }
  },
  figure(doc, body, { svg, alt, heightPt }) {
    room(doc, heightPt + 10);
    const y = doc.y + 4;
    tagged(doc, body, "Figure", () => drawSvg(doc, svg, LEFT, y, RIGHT - LEFT, heightPt), { alt });
    doc.y = y + heightPt + 6;
  },
  signature(doc, body, { text, path }) {
    room(doc, 60);
    const y = doc.y + 4;
    tagged(doc, body, "P", () =>
      doc.font("regular").fontSize(10.5).fillColor(ink).text(text, LEFT, y, { width: 300 }),
    );
    if (path) {
      const svg = `<svg viewBox="0 0 358 120"><path d="${path}" fill="none" stroke="${ink}" stroke-width="3"/></svg>`;
      tagged(doc, body, "Figure", () => drawSvg(doc, svg, 400, y - 6, 150, 50), { alt: "Signature" });
    }
    doc.y = Math.max(doc.y, path ? y + 48 : y + 16);
  },
  readings(doc, body, { head: titles, rows }) {
    const table = doc.struct("Table" as "P", {});
    body.add(table);
    readingsHead(doc, table, titles);
    for (const row of rows) readingRow(doc, table, row);
    table.end();
    rule(doc, doc.y, 2);
    doc.y += 8;
  },
  newPage(doc) {
    doc.addPage();
  },
};

function drawBlock<K extends Block["kind"]>(doc: Doc, body: Structure, block: Extract<Block, { kind: K }>) {
  (DRAW[block.kind] as (doc: Doc, body: Structure, block: Block) => void)(doc, body, block);
}

const COLUMNS = { name: LEFT, asFound: 250, asLeft: 335, limit: 400 };

function readingsHead(doc: Doc, table: Structure, titles: readonly [string, string, string, string]) {
  room(doc, 60);
  const y = doc.y;
  const row = doc.struct("TR" as "P", {});
  table.add(row);
  const cell = (text: string, x: number, width: number, align: "left" | "right") =>
    tagged(doc, row, "TH", () =>
      doc.font("bold").fontSize(10).fillColor(ink).text(text, x, y, { width, align }),
    );
  cell(titles[0], COLUMNS.name, 180, "left");
  cell(titles[1], COLUMNS.asFound - 90, 105, "right");
  cell(titles[2], COLUMNS.asLeft - 60, 75, "right");
  cell(titles[3], COLUMNS.limit, RIGHT - COLUMNS.limit, "left");
  row.end();
  doc.y = y + 18;
}

function readingRow(doc: Doc, table: Structure, row: ReadingRow) {
  const limitHeight = doc
    .font("regular")
    .fontSize(9.5)
    .heightOfString(row.limit, { width: RIGHT - COLUMNS.limit });
  const height = Math.max(34, limitHeight + 12);
  room(doc, height);
  rule(doc, doc.y, 1);
  const y = doc.y + 5;
  const line = doc.struct("TR" as "P", {});
  table.add(line);
  tagged(doc, line, "TH", () => {
    doc.font("bold").fontSize(10.5).fillColor(ink).text(row.title, COLUMNS.name, y, { width: 190 });
    doc
      .font("regular")
      .fontSize(9.5)
      .fillColor(ink2)
      .text(row.note, COLUMNS.name, y + 13, { width: 190 });
  });
  number(doc, line, row.asFound.text, row.asFound.mark, COLUMNS.asFound, y, 0.125);
  number(doc, line, row.asLeft.text, row.asLeft.mark, COLUMNS.asLeft, y, 0.165);
  tagged(doc, line, "TD", () =>
    doc
      .font("regular")
      .fontSize(9.5)
      .fillColor(ink)
      .text(row.limit, COLUMNS.limit, y + 3, { width: RIGHT - COLUMNS.limit }),
  );
  line.end();
  doc.y = y + height - 5;
}

/** A number drawn where it is one, set where it is words; its mark to the right of it. */
function number(
  doc: Doc,
  line: Structure,
  text: string,
  mark: CellMark,
  right: number,
  y: number,
  weight: number,
) {
  const isNumber = /^[<≥]?[\d.,:–−±]+$/.test(text);
  tagged(
    doc,
    line,
    "TD",
    () => {
      if (!isNumber) {
        doc
          .font("regular")
          .fontSize(9.5)
          .fillColor(ink2)
          .text(text, right - 70, y + 5, { width: 85, align: "right" });
        return;
      }
      const svg = numeralSvg({ text, heightPx: 20, style: "solid", theme: "paper", weight, label: text });
      const width = Number(/viewBox="0 0 ([\d.]+)/.exec(svg)?.[1] ?? 40);
      drawSvg(doc, svg, right - width, y + 2, width, 20);
      drawMark(doc, mark, right + 9, y + 12);
    },
    isNumber ? { alt: markWords(text, mark), actual: text } : {},
  );
}

const markWords = (text: string, mark: CellMark) =>
  mark === "outside" ? `${text}, outside` : mark === "tooClose" ? `${text}, too close to say` : text;

function drawMark(doc: Doc, mark: CellMark, x: number, y: number) {
  if (mark === "outside") doc.polygon([x - 4, y - 5], [x + 6, y], [x - 4, y + 5]).fill(ink);
  if (mark !== "tooClose") return;
  doc
    .moveTo(x - 7, y)
    .lineTo(x + 7, y)
    .moveTo(x + 3, y - 7)
    .lineTo(x + 3, y + 7)
    .lineWidth(1.4)
    .strokeColor(ink)
    .stroke();
  doc.circle(x, y, 2.6).fill(ink);
}

/** svg-to-pdfkit scales only a drawing without its own width and height. */
function drawSvg(doc: Doc, svg: string, x: number, y: number, width: number, height: number) {
  const bare = svg.replace(/(<svg[^>]*?)\swidth="[^"]*"\sheight="[^"]*"/, "$1");
  svgToPdf(doc, bare, x, y, {
    width,
    height,
    assumePt: true,
    preserveAspectRatio: "xMinYMid meet",
    fontCallback: () => "regular",
  });
}

function footers(doc: Doc, content: RecordContent, mark: string) {
  const { start, count } = doc.bufferedPageRange();
  for (let i = start; i < start + count; i++) {
    doc.switchToPage(i);
    doc.page.margins.bottom = 0;
    doc.markContent("Artifact", { type: "Pagination" });
    doc.font("regular").fontSize(9).fillColor(ink2);
    doc.text(
      `record mark ${mark
        .slice(0, 12)
        .replace(/(.{4})/g, "$1 ")
        .trim()}`,
      LEFT,
      806,
      { lineBreak: false },
    );
    doc.text(`revision ${content.revision}, page ${i + 1 - start} of ${count}`, RIGHT - 200, 806, {
      width: 200,
      align: "right",
      lineBreak: false,
    });
    doc.endMarkedContent();
  }
}
