import { SIGNS, type SignId } from "@tapside/diagnosis";
import { plainNumber } from "@tapside/words";
import { causeWords as words } from "./words.ts";

/** A sign's value as it is read at the unit: pressures in psi, flows in L/min, looks as seen or not. */
export function signText(sign: SignId, value: number): string {
  const { kind } = SIGNS[sign];
  if (kind === "look") return value >= 0.5 ? words.seen : words.notSeen;
  const [unit, factor] = words.units[kind][0];
  return `${plainNumber(Number((value / factor).toPrecision(3)))} ${unit}`;
}
