import { lineOfWater, numeralSvg } from "@tapside/pictures";
import type { Block, CellMark, ReadingCell, ReadingRow, WaterLine } from "../block.ts";
import { drawMark } from "./pdf-marks.ts";
import {
  artifact,
  type Doc,
  drawSvg,
  fits,
  ink,
  ink2,
  LEFT,
  RIGHT,
  room,
  rule,
  type Structure,
  TEXT,
  tagged,
} from "./pdf-pen.ts";

type MarkWords = Readonly<Record<CellMark, string>>;

type Readings = Extract<Block, { kind: "readings" }>;

/** Right edges of the numbers, left edge of the limits. */
const COLUMNS = { asFound: 268, asLeft: 350, limit: 392 };
const PT_PER_PX = 0.6;

/** The table of readings with the water running down beside it. */
export function drawReadings(doc: Doc, body: Structure, block: Readings, marks: MarkWords) {
  const heights = block.rows.map((row) => heightOf(doc, row));
  const table = doc.struct("Table" as "P", {});
  body.add(table);
  headRow(doc, table, block.head);
  const whole = heights.reduce((sum, height) => sum + height, 0);
  const besides = block.water && fits(doc, whole) ? block.water : undefined;
  const top = doc.y;
  block.rows.forEach((row, i) => {
    readingRow(doc, table, row, heights[i]!, marks);
  });
  table.end();
  rule(doc, doc.y, 2);
  if (besides) drawWater(doc, besides, block.rows, heights, top);
  doc.x = LEFT;
  doc.y += 8;
}

function drawWater(
  doc: Doc,
  water: WaterLine,
  rows: readonly ReadingRow[],
  heights: readonly number[],
  top: number,
) {
  let y = 0;
  const bands = rows.map((row, i) => {
    const band = { part: row.part ?? ("plain" as const), y, height: heights[i]! / PT_PER_PX };
    y += band.height;
    return band;
  });
  const width = (TEXT - LEFT - 6) / PT_PER_PX;
  const svg = lineOfWater({ ...water, bands, theme: "paper", width });
  const below = doc.y;
  artifact(doc, () => drawSvg(doc, svg, LEFT, top, width * PT_PER_PX, y * PT_PER_PX));
  doc.y = below;
}

const limitWidth = RIGHT - COLUMNS.limit;

const heightOf = (doc: Doc, row: ReadingRow): number =>
  Math.max(33, doc.font("regular").fontSize(9.5).heightOfString(row.limit, { width: limitWidth }) + 10);

function headRow(doc: Doc, table: Structure, titles: Readings["head"]) {
  room(doc, 60);
  const y = doc.y;
  const row = doc.struct("TR" as "P", {});
  table.add(row);
  const cell = (text: string, x: number, width: number, align: "left" | "right") =>
    tagged(doc, row, "TH", () =>
      doc
        .font(x === TEXT ? "regular" : "bold")
        .fontSize(10)
        .fillColor(ink)
        .text(text, x, y, { width, align }),
    );
  cell(titles[0], TEXT, 120, "left");
  cell(titles[1], COLUMNS.asFound - 90, 90, "right");
  cell(titles[2], COLUMNS.asLeft - 60, 60, "right");
  cell(titles[3], COLUMNS.limit, limitWidth, "left");
  row.end();
  doc.y = y + 17;
}

function readingRow(doc: Doc, table: Structure, row: ReadingRow, height: number, marks: MarkWords) {
  room(doc, height);
  rule(doc, doc.y, 1);
  const y = doc.y + 4;
  const line = doc.struct("TR" as "P", {});
  table.add(line);
  tagged(doc, line, "TH", () => {
    doc.font("bold").fontSize(10.5).fillColor(ink).text(row.title, TEXT, y, { width: 130 });
    doc
      .font("regular")
      .fontSize(9.5)
      .fillColor(ink2)
      .text(row.note, TEXT, y + 13, { width: 140 });
  });
  number(doc, line, row.asFound, COLUMNS.asFound, y, 0.125, marks);
  number(doc, line, row.asLeft, COLUMNS.asLeft, y, 0.165, marks);
  tagged(doc, line, "TD", () =>
    doc
      .font("regular")
      .fontSize(9.5)
      .fillColor(ink)
      .text(row.limit, COLUMNS.limit, y + 1, { width: limitWidth }),
  );
  line.end();
  doc.y = y + height - 4;
}

/** A number drawn where it is one, set where it is words; its mark to the right of it. */
function number(
  doc: Doc,
  line: Structure,
  cell: ReadingCell,
  right: number,
  y: number,
  weight: number,
  marks: MarkWords,
) {
  const { text, mark } = cell;
  const spoken = mark === "none" ? text : `${text}, ${marks[mark]}`;
  if (!/^[<≥]?[\d.,:–−±]+$/.test(text)) {
    tagged(doc, line, "TD", () => {
      doc.font("regular").fontSize(9.5).fillColor(ink2);
      doc.text(text, right - 70, y + 6, { width: 70, align: "right" });
    });
    return;
  }
  const draw = () => {
    const svg = numeralSvg({ text, heightPx: 20, style: "solid", theme: "paper", weight, label: text });
    const width = Number(/viewBox="0 0 ([\d.]+)/.exec(svg)?.[1] ?? 40);
    drawSvg(doc, svg, right - width, y + 3, width, 20);
    drawMark(doc, mark, right + 13, y + 13);
  };
  tagged(doc, line, "TD", draw, { alt: spoken, actual: spoken });
}
