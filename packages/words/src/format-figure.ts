import { type FormattedUncertain, formatUncertain, type Uncertain } from "@tapside/quantities";

/**
 * A figure with the digits its uncertainty backs.
 *
 * Source: JCGM 100, 7.2.6.
 * @example
 * ```ts
 * import { formatFigure } from "@tapside/words";
 * formatFigure({ value: 0.9284, u: 0.0211 }).text; // => "0.93"
 * ```
 */
export const formatFigure = (figure: Uncertain, decimalSign: "." | "," = "."): FormattedUncertain =>
  formatUncertain(figure, decimalSign);
