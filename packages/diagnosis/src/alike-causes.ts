import { CAUSE_IDS, type CauseId } from "./causes.ts";
import { SIGN_IDS, type SignId } from "./signs.ts";

interface AlikeCauses {
  readonly causes: readonly [CauseId, CauseId];
  /** Any one of these tells them apart. */
  readonly until: readonly SignId[];
}

/**
 * Causes that show the same at every port until one thing is looked at. Before that only their sizes differ, and how large a fault can be
 * is assumed: a meter in the wrong unit shows twice what is there as well as a changed water does.
 * Source: the physics of the unit and common practice, no source.
 */
export const ALIKE: readonly AlikeCauses[] = [
  { causes: ["restrictorBlocked", "drainLineBlocked"], until: ["drainLineOffFlow"] },
  { causes: ["feedSolidsChanged", "tdsMeterOff"], until: ["tdsStandard"] },
  { causes: ["preFilterClogged", "shutOffSticking"], until: ["afterFilterPressure"] },
  { causes: ["scaledMembrane", "brineSeal"], until: ["brineSealBad", "scaleSeen"] },
  { causes: ["healthy", "airChargeLow"], until: ["airCharge", "gasL", "drawOffL"] },
  { causes: ["oxidisedMembrane", "sealLeak"], until: ["permeateFlow", "throttledTds", "oRingBad"] },
];

/** What size alone cannot take from the less likely of two alike causes, of what both have together. */
const LEFT_TO_THE_OTHER = 0.05;

const INDEXED = ALIKE.map(({ causes: [a, b], until }) => ({
  a: CAUSE_IDS.indexOf(a),
  b: CAUSE_IDS.indexOf(b),
  until: until.map((sign) => SIGN_IDS.indexOf(sign)),
}));

/** Keeps alike causes split, in place, until what tells them apart is read. Causes with no chance at all are left so. */
export function keepSplit(p: Float64Array, isRead: (sign: number) => boolean): void {
  for (const { a, b, until } of INDEXED) {
    const least = LEFT_TO_THE_OTHER * (p[a]! + p[b]!);
    const less = p[a]! < p[b]! ? a : b;
    if (p[less]! === 0 || p[less]! >= least || until.some(isRead)) continue;
    const given = least - p[less]!;
    p[less] = least;
    const more = less === a ? b : a;
    p[more] = p[more]! - given;
  }
}
