import type { FieldValue } from "../change.ts";

type Bag = { readonly [name: string]: FieldValue };

const isBag = (value: FieldValue): value is Bag =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Enough of a reading to be shown and judged; anything else in that field is left out of the book. */
export const isReadingValue = (value: FieldValue): boolean =>
  isBag(value) &&
  typeof value.raw === "string" &&
  (value.value === null || typeof value.value === "number") &&
  typeof value.unit === "string";

export const isExceptionValue = (value: FieldValue): boolean =>
  isBag(value) && typeof value.state === "string";

export const isWorkValue = (value: FieldValue): boolean => isBag(value) && typeof value.state === "string";

export const isPhotoValue = (value: FieldValue): boolean => isBag(value) && typeof value.for === "string";

export const isStepValue = (value: FieldValue): boolean => isBag(value) && typeof value.at === "string";

export const isTimerValue = (value: FieldValue): boolean =>
  isBag(value) &&
  typeof value.what === "string" &&
  typeof value.startedMs === "number" &&
  typeof value.durationMs === "number";
