export * from "./book.ts";
export { bookOf, KIND_IDS } from "./book-of.ts";
export { canonicalJson } from "./canonical-json.ts";
export * from "./change.ts";
export type { ChangeStore } from "./change-store.ts";
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
export * from "./kinds.ts";
export { memoryStore, sortOut } from "./memory-store.ts";
export { unitFile } from "./unit-file.ts";
export { uuidV7 } from "./uuid-v7.ts";
