import {
  LINE_RANGES,
  type Line,
  RESTRICTOR_RANGES,
  type RestrictorFound,
  restrictorMeasures,
  USUAL_BORE_MM,
} from "@tapside/reverse-osmosis";
import type { NumberSpec } from "../look/read-number.ts";
import { PRESSURE } from "../screens/specs/units-offered.ts";
import { foundWords as words } from "./words.ts";

/** A number asked for on our own keypad. */
export interface FoundSpec extends NumberSpec {
  readonly field: string;
  readonly label: string;
}

const BORE = { baseUnit: "mm", units: ["mm", "in"] } as const;
const LENGTH = { baseUnit: "m", units: ["m", "ft"] } as const;

type Measure = ReturnType<typeof restrictorMeasures>[number];

const MEASURES: Readonly<Record<Measure, NumberSpec>> = {
  restrictorLPerH: { baseUnit: "L/h", units: ["mL/min", "L/h", "gpd"] },
  restrictorAtKPaGauge: { baseUnit: "kPa", units: PRESSURE },
  restrictorAtC: { baseUnit: "°C", units: ["°C", "°F"] },
  restrictorBoreMm: BORE,
  restrictorLengthM: { baseUnit: "m", units: ["m", "cm", "ft"] },
};

/** What is asked of a restrictor of the kind that was found. */
export const restrictorSpecs = (found: RestrictorFound): readonly FoundSpec[] =>
  restrictorMeasures(found).map((field) => ({
    ...MEASURES[field],
    field,
    label: words.measures[field],
    range: RESTRICTOR_RANGES[field],
  }));

/** What is asked of a line: its length; its bore counts as usual until somebody measures it. */
export const lineSpecs = (line: Line): readonly FoundSpec[] => [
  { ...LENGTH, field: `${line}TubeLengthM`, label: words.length, range: LINE_RANGES.lengthM },
  {
    ...BORE,
    field: `${line}TubeBoreMm`,
    label: words.bore,
    range: LINE_RANGES.boreMm,
    otherwise: USUAL_BORE_MM[line],
  },
];
