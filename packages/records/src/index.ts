export { absentPorts } from "./absent-ports.ts";
export * from "./book.ts";
export { bookInStretches, bookOf, KIND_IDS } from "./book-of.ts";
export { canonicalJson } from "./canonical-json.ts";
export * from "./change.ts";
export type { ChangeStore } from "./change-store.ts";
export { chargeSet } from "./charge-set.ts";
export { checkText, checkValue } from "./check-text.ts";
export { exportFile, FILE_FORMAT, type FileContent, type Photo } from "./export-file.ts";
export {
  EMPTY_STATE,
  type FieldState,
  fold,
  type Held,
  type RecordState,
  replacedBy,
  rivalsOf,
  type State,
} from "./fold.ts";
export { isStamp, msOf, NO_STAMP, nextStamp, observeStamp, type Stamp } from "./hybrid-clock.ts";
export { importFile } from "./import-file.ts";
export * from "./kinds.ts";
export { leavesFilling } from "./leaves-filling.ts";
export { memoryStore, sortOut } from "./memory-store.ts";
export { MIGRATIONS, type Migration, migrate, SCHEMA } from "./migrate.ts";
export { partsInService } from "./parts-in-service.ts";
export { inBaseUnit, isUnusual, makeReading, photographed, type TypedReading } from "./reading.ts";
export { type Frozen, freeze, inputsChangedSince, inputsMark, verifyRecord } from "./service-record.ts";
export { sha256Hex } from "./sha256.ts";
export { FURTHER_SLOTS, type Range, SLOTS, type Slot, type SlotQuantity, USUAL_DRAW_L } from "./slots.ts";
export { staysBypassed } from "./stays-bypassed.ts";
export { undoOf } from "./undo.ts";
export { unitFile } from "./unit-file.ts";
export { unitTitle } from "./unit-title.ts";
export { uuidV7 } from "./uuid-v7.ts";
export { withHourCounter } from "./with-hour-counter.ts";
