export type {
  Block,
  CellMark,
  ReadingCell,
  ReadingRow,
  RecordContent,
  ValveSign,
  WaterLine,
} from "./block.ts";
export { buildRecord, type RecordRequest } from "./build-record.ts";
export { buildClaim } from "./claim.ts";
export { type JudgedAgain, judgeAgain } from "./judge-again.ts";
