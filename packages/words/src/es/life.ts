import type { Uncertain } from "@tapside/quantities";
import { formatUncertain } from "@tapside/quantities";
import type { DecimalSign, Messages } from "../messages.ts";
import { DECIMAL_SIGN } from "./number.ts";

const ratio = (measured: Uncertain | undefined, sign: DecimalSign): string =>
  measured ? formatUncertain(measured, sign).text : "no se conoce";

export const life: Messages["life"] = (points, sign = DECIMAL_SIGN) =>
  points
    .filter((point) => point.flowRatio || point.saltRatio)
    .map(
      (point) =>
        `${point.at.slice(0, 10)}: caudal ${ratio(point.flowRatio, sign)}, paso de sal ${ratio(point.saltRatio, sign)} de lo que era nuevo`,
    )
    .join("; ");
