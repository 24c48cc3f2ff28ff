import { inSign } from "@tapside/words";
import { messages } from "./messages.ts";

/** A number in so many digits, without trailing zeros and with the decimal sign of the settings. */
export const inDigits = (value: number, digits: number): string =>
  inSign(String(Number(value.toPrecision(digits))), messages.decimalSign);
