import type { ApplianceUse } from "@tapside/book";
import { inSign } from "@tapside/words";
import { day } from "../screens/day.ts";
import { messages } from "../words/messages.ts";
import { visitWords as words } from "./words.ts";

/** Where an appliance's counter stood, and what is used a day. */
export function counterSaid({ value, unit, on, perDay }: ApplianceUse): string {
  const shown = (number: number) => inSign(String(number), messages.decimalSign);
  const stood = words.counterStood(shown(value), unit, day(on));
  return perDay === undefined
    ? stood
    : `${stood}; ${words.perDay(shown(Number(perDay.toPrecision(2))), unit)}`;
}
