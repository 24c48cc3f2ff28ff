/** What a field may hold: plain JSON. */
export type FieldValue =
  | null
  | boolean
  | number
  | string
  | readonly FieldValue[]
  | { readonly [name: string]: FieldValue };

/** The field that marks a record as retracted (`true`) or restored (`false`). */
export const GONE = "$gone";

/**
 * One append-only statement about one record. The newest `at` per field wins; nothing is ever overwritten.
 * `at` is a hybrid logical clock stamp that sorts as text; `wall` is the device's own time, kept beside.
 */
export interface Change {
  /** UUIDv7. */
  readonly id: string;
  readonly record: string;
  readonly kind: string;
  readonly fields: Readonly<Record<string, FieldValue>>;
  readonly at: string;
  readonly wall?: string;
  readonly device: string;
  readonly schema: number;
  readonly why?: string;
  /**
   * Ids of other devices' changes whose values this one replaces knowingly. What was replaced
   * without being named here was written at the same time elsewhere, and is shown, not hidden.
   */
  readonly over?: readonly string[];
}
