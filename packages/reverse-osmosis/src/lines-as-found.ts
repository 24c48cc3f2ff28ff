import { known, missing, type Outcome, refused } from "@tapside/quantities";
import { tubesLossKPa } from "./internal/tubes-loss.ts";
import type { Tube } from "./tube-drop.ts";
import type { Unit } from "./unit.ts";

/** Lines that take a pressure worth counting: from the filters' first gauge to the element, to the tank, to the drain, from the tank to the tap. */
export const LINES = ["feed", "permeate", "drain", "outlet"] as const;
export type Line = (typeof LINES)[number];

type LengthField = `${Line}TubeLengthM`;
type BoreField = `${Line}TubeBoreMm`;
/** Lengths and bores as written down; a line without a length is not counted. */
export type LinesFound = { readonly [F in LengthField | BoreField]?: number };

/**
 * Bores of lines nobody measured: 1/4 in tube outside (0.170 in bore), 3/8 in from the tank to the outlet (0.250 in).
 * Source: common practice, no source; walls vary.
 */
export const USUAL_BORE_MM: Readonly<Record<Line, number>> = {
  feed: 4.318,
  permeate: 4.318,
  drain: 4.318,
  outlet: 6.35,
};

/** What such a line can be. Common practice, no source; bores as far as `tubeDrop` reaches. */
export const LINE_RANGES = { lengthM: [0.05, 100], boreMm: [2, 20] } as const;

/** A flow all lines meet, and the most one may take of it: more is no line that a unit worked with. Common practice, no source. */
const PLAUSIBLE = { flowLPerH: 60, temperatureC: 20, mostKPa: 200 } as const;

/** What a line takes, kPa; at a litre a minute and 20 °C when nothing else is told. */
export const lineLossKPa = (
  tube: Tube,
  flowLPerH: number = PLAUSIBLE.flowLPerH,
  temperatureC: number = PLAUSIBLE.temperatureC,
): number => tubesLossKPa([tube], flowLPerH, temperatureC);

/**
 * One line of a unit: its length as found, its bore as found or usual.
 *
 * Range: `LINE_RANGES`; refused beyond with "out-of-range", with "line-takes-too-much" when it would take over 200 kPa of a litre a minute.
 * @example
 * ```ts
 * import { lineAsFound } from "@tapside/reverse-osmosis";
 * lineAsFound("drain", { drainTubeLengthM: 3 }); // => { kind: "known", value: { boreMm: 4.318, lengthM: 3 } }
 * ```
 */
export function lineAsFound(line: Line, found: LinesFound): Outcome<Tube> {
  const lengthM = found[`${line}TubeLengthM`];
  if (!(lengthM! > 0)) return missing(`unit.${line}TubeLengthM`);
  const boreMm = found[`${line}TubeBoreMm`] ?? USUAL_BORE_MM[line];
  const tube = { boreMm, lengthM: lengthM! };
  for (const name of ["lengthM", "boreMm"] as const) {
    const [low, high] = LINE_RANGES[name];
    if (!(tube[name] >= low && tube[name] <= high))
      return refused("out-of-range", { name, value: tube[name], low, high });
  }
  const kPa = lineLossKPa(tube);
  return kPa > PLAUSIBLE.mostKPa ? refused("line-takes-too-much", { kPa: Math.round(kPa) }) : known(tube);
}

/** The lines of a unit that count. */
export function linesAsFound(
  found: LinesFound,
): Pick<Unit, "feedTubes" | "permeateTubes" | "drainTubes" | "outletTubes"> {
  const tubes = LINES.flatMap((line) => {
    const one = lineAsFound(line, found);
    return one.kind === "known" ? [[`${line}Tubes`, [one.value]] as const] : [];
  });
  return Object.fromEntries(tubes);
}
