import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { expect, it } from "vitest";
import { type Sticker, stickersPdf } from "./stickers.ts";
import { FONTS } from "./test-support/demo-record.ts";

const CODES = ["W0W7-8GYN", "WWWW-WWWW", "MMMM-MMMM", "1111-1111", "AVAY-TAVA", "YTYA-VAYT"];

const stickers: readonly Sticker[] = CODES.map((code) => ({
  link: `https://example.invalid/#/s/${code}`,
  code,
  lines: ["Withy Bridge depot kitchen, a name too long for one line", "Left"],
}));

interface Piece {
  readonly str: string;
  readonly transform: readonly number[];
  readonly width: number;
}

async function pieces(bytes: Uint8Array): Promise<readonly (readonly Piece[])[]> {
  const pdf = await getDocument({ data: bytes, verbosity: 0 }).promise;
  const pages = [];
  for (let i = 1; i <= pdf.numPages; i++) {
    const { items } = await (await pdf.getPage(i)).getTextContent();
    pages.push(items.filter((item) => "str" in item));
  }
  return pages;
}

it.each([
  { widthMm: 57, heightMm: 32 },
  { widthMm: 40, heightMm: 25 },
])("a code stands in one piece within its sticker of %j, whatever its letters", async (size) => {
  const pages = await pieces(await stickersPdf(stickers, FONTS, size));
  expect(pages.map((page) => page[0]?.str)).toEqual(CODES);
  const rightEdge = (size.widthMm * 72) / 25.4;
  for (const page of pages)
    for (const piece of page) expect(piece.transform[4]! + piece.width).toBeLessThanOrEqual(rightEdge);
});
