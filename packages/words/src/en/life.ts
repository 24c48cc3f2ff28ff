import type { Uncertain } from "@tapside/quantities";
import { formatUncertain } from "@tapside/quantities";
import type { DecimalSign, Messages } from "../messages.ts";

const ratio = (measured: Uncertain | undefined, sign: DecimalSign): string =>
  measured ? formatUncertain(measured, sign).text : "not known";

export const life: Messages["life"] = (points, sign = ".") =>
  points
    .filter((point) => point.flowRatio || point.saltRatio)
    .map(
      (point) =>
        `${point.at.slice(0, 10)}: flow ${ratio(point.flowRatio, sign)}, salt passage ${ratio(point.saltRatio, sign)} of new`,
    )
    .join("; ");
