import { inSign } from "./in-sign.ts";
import type { DecimalSign } from "./messages.ts";
import type { WaterWords } from "./water-words.ts";

const UNITS: Readonly<Record<string, string>> = {
  Alk: "mg/L CaCO₃",
  alkalinityMgPerLCaCO3: "mg/L CaCO₃",
  hardnessMgPerLCaCO3: "mg/L CaCO₃",
  hardness: "mg/L CaCO₃",
  ec25UsPerCm: "µS/cm",
  ec25: "µS/cm",
  temperatureC: "°C",
  pH: "",
};

/** Unit of a constituent or reading of a water, the same in every language. */
export const waterUnit = (id: string): string => UNITS[id] ?? "mg/L";

/** Two figures, and no more than one decimal from 1 on. */
function short(value: number, sign: DecimalSign): string {
  if (value >= 100) return String(Number(value.toPrecision(2)));
  if (value >= 10) return value.toFixed(0);
  return inSign(String(Number(value.toFixed(value >= 1 ? 1 : 2))), sign);
}

/** "60–85", or the middle where both ends read the same. */
export const amountRange = (sign: DecimalSign, low: number, high: number, middle: number = high): string =>
  short(low, sign) === short(high, sign) ? short(middle, sign) : `${short(low, sign)}–${short(high, sign)}`;

/** What was read as one number, what was completed as a range: two figures, no more than the interval backs. */
export const readOrRange =
  (sign: DecimalSign): WaterWords["range"] =>
  (low, middle, high, measured) =>
    measured ? short(middle, sign) : amountRange(sign, low, high, middle);

interface Bounds {
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
}

/** "at least 3 mg/L", "6–8", "up to 50 mg/L CaCO₃"; pH has no unit. */
export function boundsText(
  { low, high, unit }: Bounds,
  say: { readonly atLeast: string; readonly upTo: string; readonly decimalSign: DecimalSign },
): string {
  const text = unit.replace("CaCO3", "CaCO₃").replace(/^pH$/, "");
  const [from, to] = [low, high].map((end) => end !== undefined && inSign(String(end), say.decimalSign));
  const said = from && to ? `${from}–${to}` : from ? `${say.atLeast} ${from}` : `${say.upTo} ${to}`;
  return `${said} ${text}`.trim();
}

/** "410 µS/cm": two figures, as a pen is to be believed. */
export const conductivityText = (ec25UsPerCm: number): string =>
  `${Number(ec25UsPerCm.toPrecision(2))} µS/cm`;
