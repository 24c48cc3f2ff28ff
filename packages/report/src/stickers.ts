import PDFDocument from "pdfkit";
import { joined } from "./internal/joined.ts";
import { ink } from "./internal/pdf-pen.ts";
import type { PdfFonts } from "./pdf.ts";
import { signOf } from "./sign.ts";

/** One sticker: what its sign holds, the code in words, and what is written beside it. */
export interface Sticker {
  readonly link: string;
  readonly code: string;
  readonly lines: readonly string[];
}

export interface StickerSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A common width of label rolls: common practice, no source. */
const USUAL: StickerSize = { widthMm: 57, heightMm: 32 };
const PT_PER_MM = 72 / 25.4;

/** Stickers as a PDF for a label roll: one sticker a page, the sign as lines and not as a picture. */
export async function stickersPdf(
  stickers: readonly Sticker[],
  fonts: PdfFonts,
  size: StickerSize = USUAL,
): Promise<Uint8Array> {
  const [width, height] = [size.widthMm * PT_PER_MM, size.heightMm * PT_PER_MM];
  const doc = new PDFDocument({
    size: [width, height],
    margin: 0,
    autoFirstPage: false,
    // biome-ignore lint/suspicious/noExplicitAny: the types do not know that no built-in font is wanted
    font: null as any,
    lang: "en",
    tagged: true,
    pdfVersion: "1.7",
    info: { Title: "Stickers", Producer: "Tapside", CreationDate: new Date(0) },
  });
  doc.registerFont("regular", fonts.regular as unknown as ArrayBuffer);
  doc.registerFont("bold", fonts.bold as unknown as ArrayBuffer);
  const chunks: Uint8Array[] = [];
  const finished = new Promise<void>((resolve, reject) => {
    doc.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    doc.on("end", resolve);
    doc.on("error", reject);
  });
  for (const sticker of stickers) drawSticker(doc, sticker, width, height);
  if (stickers.length === 0) doc.addPage();
  doc.end();
  await finished;
  return joined(chunks);
}

function drawSticker(doc: PDFKit.PDFDocument, sticker: Sticker, width: number, height: number) {
  doc.addPage({ size: [width, height], margin: 0 });
  const page = doc.struct("Sect", {});
  doc.addStructure(page);
  const side = height;
  page.add(doc.struct("Figure", { alt: `QR sign ${sticker.code}` }, () => drawSign(doc, sticker.link, side)));
  const room = width - side - 4;
  page.add(
    doc.struct("P", {}, () => {
      doc.font("bold").fillColor(ink);
      doc.fontSize(sizeThatFits(doc, sticker.code, room));
      doc.text(sticker.code, side, 10, { lineBreak: false });
      doc.font("regular").fontSize(7);
      for (const [i, line] of sticker.lines.slice(0, 4).entries())
        doc.text(line, side, 28 + i * 15, { width: room, height: 15, ellipsis: true });
    }),
  );
  page.end();
}

/** Largest type, in points up to 11, at which the text takes one line of the room. */
function sizeThatFits(doc: PDFKit.PDFDocument, text: string, room: number): number {
  const largest = 11;
  return Math.min(largest, (largest * room) / doc.fontSize(largest).widthOfString(text));
}

/** The sign as one path of whole modules. */
function drawSign(doc: PDFKit.PDFDocument, link: string, side: number) {
  const { modules, dark } = signOf(link);
  const module = side / modules;
  for (const [x, y] of dark) doc.rect(x * module, y * module, module, module);
  doc.fillColor("#000000").fill();
}
