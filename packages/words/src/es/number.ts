import { decimalSignIn } from "../decimal-signs.ts";
import { plainNumber } from "../plain-number.ts";

/** What Spanish writes its decimals behind here. */
export const DECIMAL_SIGN = decimalSignIn("es");

/** A number within a sentence. */
export const number = (value: number): string => plainNumber(value, DECIMAL_SIGN);
