import type { BandPart, LineOfWaterRequest } from "@tapside/pictures";

/** The sign beside a number of the record. */
export type CellMark = "outside" | "notExpected" | "tooClose" | "none";

export interface ReadingCell {
  readonly text: string;
  readonly mark: CellMark;
}

export interface ReadingRow {
  readonly title: string;
  /** Unit, uncertainty, scale. */
  readonly note: string;
  readonly asFound: ReadingCell;
  readonly asLeft: ReadingCell;
  readonly limit: string;
  /** What stands at this row on the line of water. */
  readonly part?: BandPart;
}

/** The water beside the table of readings, where its flows and solids are known. */
export type WaterLine = Pick<
  LineOfWaterRequest,
  "feedLPerMin" | "permeateLPerMin" | "feedMgPerL" | "permeateMgPerL" | "flowing" | "bypass"
>;

export interface ValveSign {
  readonly text: string;
  readonly open: boolean;
}

/** What a service record is made of: plain data, the same on screen, on paper and in the frozen text. */
export type Block =
  | { readonly kind: "heading"; readonly text: string }
  | {
      readonly kind: "paragraph";
      readonly text: string;
      readonly strong?: boolean;
      readonly quiet?: boolean;
      /** To be read from across a room. */
      readonly large?: boolean;
    }
  | {
      readonly kind: "readings";
      readonly head: readonly [string, string, string, string];
      readonly rows: readonly ReadingRow[];
      readonly water?: WaterLine;
    }
  | {
      readonly kind: "list";
      readonly title: string;
      readonly items: readonly string[];
      /** To be read from across a room. */
      readonly large?: boolean;
      /** Drawn instead of the items where there is a pen. */
      readonly valves?: readonly ValveSign[];
    }
  | { readonly kind: "figure"; readonly svg: string; readonly alt: string; readonly heightPt: number }
  | { readonly kind: "signature"; readonly text: string; readonly path?: string }
  | { readonly kind: "newPage" };

/** The content that is frozen: its canonical text carries the mark. */
export interface RecordContent {
  readonly version: 1;
  /** Of its words; English in records of the first kind. */
  readonly language?: string;
  readonly title: string;
  readonly subtitle: string;
  /** Right of the title, top to bottom. */
  readonly aside: readonly string[];
  readonly revision: number;
  readonly unit: string;
  readonly visit: string;
  readonly issuedAt: string;
  readonly inputsMark: string;
  readonly temperatureForm: string;
  /** Number of the rules it was judged by; absent in records from before they had numbers. */
  readonly rules?: number;
  /** The judgement, rounded at the boundary. */
  readonly assessment: unknown;
  /** What it was judged from, up to and with this visit; absent in records of the first kind. */
  readonly inputs?: unknown;
  readonly settings?: unknown;
  /** Ids of the sources its limits come from. */
  readonly sources?: readonly string[];
  readonly blocks: readonly Block[];
}
