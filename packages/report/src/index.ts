export type {
  Block,
  CellMark,
  ReadingCell,
  ReadingRow,
  RecordContent,
  ValveSign,
  WaterLine,
} from "./block.ts";
export { buildRecord, type RecordRequest, type SaidCause } from "./build-record.ts";
export { buildClaim } from "./claim.ts";
