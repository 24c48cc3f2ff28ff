export { type ApplianceUse, applianceUse } from "./appliance-use.ts";
export { type CalendarWords, calendarFile } from "./calendar.ts";
export { type CarryLine, carryList, plannedFor } from "./carry-list.ts";
export { decodeText, readCsv } from "./csv.ts";
export { daysAfter } from "./days.ts";
export { type DueReason, type DueRow, dueList } from "./due-list.ts";
export {
  type AmongNeighbours,
  type FeedRead,
  feedAmongNeighbours,
  neighbourFeeds,
  neighboursOfVisit,
  typedAmongNeighbours,
} from "./feed-among-neighbours.ts";
export { keptDueList } from "./kept-due-list.ts";
export {
  CALL_ITEMS,
  type CallItem,
  callLink,
  complaintItems,
  type KitchenCall,
  readCall,
} from "./kitchen-call.ts";
export { type KitchenOfUnit, kitchenOfUnit, type LitresFrom, usesOf } from "./kitchen-of-unit.ts";
export { type LabelText, labelText, lotAndSerial } from "./label-text.ts";
export { type ListEdit, listEdits } from "./list-edits.ts";
export { LIST_COLUMNS, type ListPreview, type ListRow, type RefusedRow, readList } from "./list-preview.ts";
export { checkOfDay, METER_STANDARDS, offBy } from "./meter-check.ts";
export { type LedgerLine, ledgerU, type MeterLedger, meterLedger } from "./meter-ledger.ts";
export { type Counted, type MonthlySummary, monthlyCsv, monthlySummary } from "./monthly-summary.ts";
export { ownScore, type ScoreTotals, scoreTotals, techniciansIn, type VisitScore } from "./own-score.ts";
export { type OwnerSpan, ownersOf } from "./owners.ts";
export { readSensor, type SensorPreview, sensorSummary } from "./read-sensor.ts";
export { type PartHit, searchText, unitsFound, whereIs } from "./search.ts";
export { codeOfUnit, newStickerCode, readSticker, stickerLink, unitOfSticker } from "./sticker-code.ts";
export { type CarryInVan, carryInVan, type VanLine, vanStock } from "./van-stock.ts";
export { type PointSpan, pointHistory, unitHistory } from "./whereabouts.ts";
export { partsCsv, workLinesCsv } from "./work-lines.ts";
