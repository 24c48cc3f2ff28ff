import type { CellMark } from "../block.ts";
import { type Doc, ink } from "./pdf-pen.ts";

const MARKS: Readonly<Record<CellMark, (doc: Doc, x: number, y: number) => void>> = {
  none: () => undefined,
  outside: (doc, x, y) => triangle(doc, x, y).fill(ink),
  notExpected: (doc, x, y) => triangle(doc, x, y).lineWidth(1.4).strokeColor(ink).stroke(),
  tooClose(doc, x, y) {
    doc
      .moveTo(x - 7, y)
      .lineTo(x + 7, y)
      .moveTo(x - 7, y - 4)
      .lineTo(x - 7, y + 4)
      .moveTo(x + 3, y - 7)
      .lineTo(x + 3, y + 7)
      .lineWidth(1.4)
      .strokeColor(ink)
      .stroke();
    doc.circle(x - 2, y, 2.6).fill(ink);
  },
};

const triangle = (doc: Doc, x: number, y: number) => doc.polygon([x - 4, y - 5], [x + 6, y], [x - 4, y + 5]);

export const drawMark = (doc: Doc, mark: CellMark, x: number, y: number) => MARKS[mark](doc, x, y);

/** An open valve lies along its pipe, a shut one across it. */
export function drawValve(doc: Doc, open: boolean, x: number, y: number) {
  doc
    .moveTo(x - 2.5, y - 12)
    .lineTo(x - 2.5, y + 12)
    .moveTo(x + 2.5, y - 12)
    .lineTo(x + 2.5, y + 12)
    .lineWidth(1)
    .strokeColor(ink)
    .stroke();
  if (open) doc.rect(x - 2.5, y - 8, 5, 16).fill(ink);
  else {
    doc.rect(x - 5, y - 5, 10, 10).fill("#FFFFFF");
    doc.rect(x - 9, y - 2.5, 18, 5).fill(ink);
  }
}
