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
function short(value: number): string {
  if (value >= 100) return String(Number(value.toPrecision(2)));
  if (value >= 10) return value.toFixed(0);
  return value >= 1 ? String(Number(value.toFixed(1))) : String(Number(value.toFixed(2)));
}

/** "60–85", or the middle where both ends read the same. */
export const amountRange = (low: number, high: number, middle: number = high): string =>
  short(low) === short(high) ? short(middle) : `${short(low)}–${short(high)}`;

/** What was read as one number, what was completed as a range: two figures, no more than the interval backs. */
export const readOrRange = (low: number, middle: number, high: number, measured: boolean): string =>
  measured ? short(middle) : amountRange(low, high, middle);

interface Bounds {
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
}

/** "at least 3 mg/L", "6–8", "up to 50 mg/L CaCO₃"; pH has no unit. */
export function boundsText(
  { low, high, unit }: Bounds,
  say: { readonly atLeast: string; readonly upTo: string },
): string {
  const text = unit.replace("CaCO3", "CaCO₃").replace(/^pH$/, "");
  const both = low !== undefined && high !== undefined;
  const said = both ? `${low}–${high}` : low !== undefined ? `${say.atLeast} ${low}` : `${say.upTo} ${high}`;
  return `${said} ${text}`.trim();
}

/** "410 µS/cm": two figures, as a pen is to be believed. */
export const conductivityText = (ec25UsPerCm: number): string =>
  `${Number(ec25UsPerCm.toPrecision(2))} µS/cm`;
