export type { Block, CellMark, ReadingCell, ReadingRow, RecordContent } from "./block.ts";
export { buildRecord, type RecordRequest } from "./build-record.ts";
