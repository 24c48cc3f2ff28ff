/**
 * A number with its standard uncertainty `u` (one sigma, same unit as `value`).
 * Source: JCGM 100 (GUM), the notation of clause 2.
 */
export interface Uncertain {
  readonly value: number;
  readonly u: number;
}
