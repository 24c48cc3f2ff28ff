import { COLOURS } from "@tapside/pictures";
import svgToPdf from "svg-to-pdfkit";

export type Doc = PDFKit.PDFDocument;
export type Structure = PDFKit.PDFStructureElement;

/** Edges of what is printed, in points from the top left of A4; text stands at `TEXT`, right of the water. */
export const LEFT = 40;
export const TEXT = 88;
export const RIGHT = 555;
const BOTTOM = 782;
export const { ink, ink2 } = COLOURS.paper;

/** Draws inside a structure element of its own, so that the tags follow the reading order. */
export function tagged(doc: Doc, parent: Structure, type: string, draw: () => void, options: object = {}) {
  parent.add(doc.struct(type as "P", options, [draw]));
}

/** What only decorates: no reader is told of it. */
export function artifact(doc: Doc, draw: () => void, type: "Layout" | "Pagination" = "Layout") {
  doc.markContent("Artifact", { type });
  draw();
  doc.endMarkedContent();
}

export function rule(doc: Doc, y: number, width: number) {
  artifact(doc, () => doc.moveTo(LEFT, y).lineTo(RIGHT, y).lineWidth(width).strokeColor(ink).stroke());
}

/** A new page unless this height still fits. */
export function room(doc: Doc, height: number) {
  if (!fits(doc, height)) doc.addPage();
}

export const fits = (doc: Doc, height: number): boolean => doc.y + height <= BOTTOM;

/** svg-to-pdfkit scales only a drawing without its own width and height. */
export function drawSvg(doc: Doc, svg: string, x: number, y: number, width: number, height: number) {
  const bare = svg.replace(/(<svg[^>]*?)\swidth="[^"]*"\sheight="[^"]*"/, "$1");
  svgToPdf(doc, bare, x, y, {
    width,
    height,
    assumePt: true,
    preserveAspectRatio: "xMinYMid meet",
    fontCallback: () => "regular",
  });
}
