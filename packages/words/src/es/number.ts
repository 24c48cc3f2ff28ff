import { plainNumber } from "../plain-number.ts";

/** Spanish writes its decimals behind a comma. Source: Unicode CLDR, numbers of "es". */
export const DECIMAL_SIGN = ",";

/** A number within a sentence. */
export const number = (value: number): string => plainNumber(value, DECIMAL_SIGN);
