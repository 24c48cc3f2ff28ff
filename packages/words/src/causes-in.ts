import { type Measure, type Measured, SIGNS, SIZE_KNOWN_WITHIN, type SignKind } from "@tapside/diagnosis";
import type { CauseMessages, CausePhrases } from "./cause-messages.ts";
import type { DecimalSign } from "./messages.ts";
import { plainNumber } from "./plain-number.ts";

const KPA_PER_PSI = 6.894757;

type Write = (size: Measured) => string;

/** How the size of a cause is written: as a share, in psi, or plainly, with its interval. */
function measuresWith(decimalSign: DecimalSign): { readonly [M in Measure]: Write } {
  const two = (value: number) => plainNumber(Number(value.toPrecision(2)), decimalSign);
  /** A value with its interval, every number times `factor`. */
  const spanned =
    (factor: number): Write =>
    ({ value, low, high }) =>
      `${two(factor * value)} (${two(factor * low)} – ${two(factor * high)})`;
  const plain = spanned(1);
  const psi = spanned(1 / KPA_PER_PSI);
  const share: Write = (size) => `${spanned(100)(size)} %`;
  return {
    waterPasses: share,
    saltPasses: plain,
    drainPasses: share,
    filterLoss: plain,
    feedPressure: psi,
    temperature: plain,
    airCharge: psi,
    pastElement: share,
    chlorinePasses: share,
    hardness: plain,
    feedSolids: plain,
    meterShows: share,
    gaugeShows: share,
    firstDraw: plain,
    dailyLitres: plain,
  };
}

/** Units a sign may be typed in, the first one shown, each with what it holds of the coherent unit. */
const unitsIn = ({ asNaCl, asCaCO3, ofRight }: CausePhrases): CauseMessages["units"] => ({
  pressure: [
    ["psi", KPA_PER_PSI],
    ["bar", 100],
    ["kPa", 1],
  ],
  flow: [
    ["L/min", 60],
    ["L/h", 1],
  ],
  solids: [[`mg/L ${asNaCl}`, 1]],
  temperature: [["°C", 1]],
  chlorine: [["mg/L", 1]],
  hardness: [[`mg/L ${asCaCO3}`, 1]],
  litres: [["L", 1]],
  ratio: [[`% ${ofRight}`, 0.01]],
  look: [["", 1]],
});

/** The words of finding a cause, from the phrases of one language; what is rounded and where the grades part is the same in all. */
export function causesIn(phrases: CausePhrases): CauseMessages {
  const { grades, seen, notSeen, over, under } = phrases;
  const written = measuresWith(phrases.decimalSign);
  const units: Readonly<Record<SignKind, CauseMessages["units"][SignKind]>> = unitsIn(phrases);
  return {
    ...phrases,
    units,
    measure: (size) => phrases.measures[size.measure](written[size.measure](size)),
    grade: (size, u) =>
      u > SIZE_KNOWN_WITHIN
        ? grades.unknown
        : size < 1 / 3
          ? grades.mild
          : size < 2 / 3
            ? grades.middling
            : grades.severe,
    minutes: (value) => (value < 1 ? `${under} 1 min` : `${Math.round(value)} min`),
    percent: (p) => (p > 0.99 ? `${over} 99 %` : p < 0.01 ? `${under} 1 %` : `${Math.round(100 * p)} %`),
    signText: (sign, value, figures = 3) => {
      const { kind } = SIGNS[sign];
      if (kind === "look") return value >= 0.5 ? seen : notSeen;
      const [unit, factor] = units[kind][0];
      return `${plainNumber(Number((value / factor).toPrecision(figures)), phrases.decimalSign)} ${unit}`;
    },
  };
}
