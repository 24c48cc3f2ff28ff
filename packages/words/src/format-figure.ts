import type { Figure } from "@tapside/assessment";
import { type FormattedUncertain, formatUncertain } from "@tapside/quantities";

/** A figure with the digits its uncertainty backs. */
export const formatFigure = (figure: Figure, decimalSign: "." | "," = "."): FormattedUncertain =>
  formatUncertain(figure, decimalSign);
