/** A calculation that succeeded. */
export interface Known<T> {
  readonly kind: "known";
  readonly value: T;
}

/** "Cannot tell, because … is missing": `missing` holds plain ids of the readings or record fields. */
export interface Missing {
  readonly kind: "missing";
  readonly missing: readonly string[];
}

/**
 * An answer that was asked for outside what can be answered: out of range, contradictory, no root.
 * `code` is a stable id that message modules turn into a sentence; `detail` holds its numbers and names.
 */
export interface Refused {
  readonly kind: "refused";
  readonly code: string;
  readonly detail: Readonly<Record<string, string | number>>;
}

/** What every calculation in the house ends in. Only our own bugs throw. */
export type Outcome<T> = Known<T> | Missing | Refused;

export const known = <T>(value: T): Known<T> => ({ kind: "known", value });

export const missing = (...ids: readonly string[]): Missing => ({ kind: "missing", missing: ids });

export const refused = (code: string, detail: Refused["detail"] = {}): Refused => ({
  kind: "refused",
  code,
  detail,
});

/** Applies `f` to a known value and passes every other outcome on unchanged. */
export function mapOutcome<A, B>(outcome: Outcome<A>, f: (value: A) => Outcome<B>): Outcome<B> {
  return outcome.kind === "known" ? f(outcome.value) : outcome;
}

/** All values when every outcome is known; otherwise everything that is missing, or the first refusal. */
export function allKnown<T extends Readonly<Record<string, unknown>>>(
  outcomes: {
    readonly [K in keyof T]: Outcome<T[K]>;
  },
): Outcome<T> {
  const values: Record<string, unknown> = {};
  const absent: string[] = [];
  let refusal: Refused | undefined;
  for (const [name, outcome] of Object.entries(outcomes) as [string, Outcome<unknown>][]) {
    if (outcome.kind === "known") values[name] = outcome.value;
    else if (outcome.kind === "missing") absent.push(...outcome.missing);
    else refusal ??= outcome;
  }
  if (absent.length > 0) return missing(...new Set(absent));
  return refusal ?? known(values as T);
}
