import type { Figure } from "@tapside/assessment";
import { type FormattedUncertain, formatUncertain } from "@tapside/quantities";
import { inSign } from "./in-sign.ts";

/** A figure with the digits its uncertainty backs, and never more than the meter showed. */
export function formatFigure(figure: Figure, decimalSign: "." | "," = "."): FormattedUncertain {
  const formatted = formatUncertain(figure, decimalSign);
  const decimals = formatted.text.split(decimalSign)[1]?.length ?? 0;
  if (figure.decimalsRead === undefined || figure.decimalsRead >= decimals) return formatted;
  return { ...formatted, text: inSign(figure.value.toFixed(figure.decimalsRead), decimalSign) };
}
