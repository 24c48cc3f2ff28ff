import { updateActivities } from "./activity.ts";
import { PLACES } from "./layout.ts";
import type { Workspace } from "./workspace.ts";

const at = PLACES;

/** What fixes the carbonate of a sweep: the alkalinity, the total carbon, or a gas above the water. */
export const BY_ALKALINITY = 0;
export const BY_CARBON = 1;
export const BY_GAS = 2;
export type CarbonateMode = typeof BY_ALKALINITY | typeof BY_CARBON | typeof BY_GAS;

/**
 * One pass of successive substitution at the workspace's hydrogen activity: free ions from their balances (every
 * denominator is at least 1, so a molality never turns negative), pairs, ionic strength, water activity.
 * Leaves the alkalinity residual (calculated − given), its slope against ln a(H+), and the largest relative change.
 */
export function sweep(ws: Workspace, mode: CarbonateMode): void {
  updateActivities(ws);
  freeCations(ws);
  freeAnions(ws);
  silicaAndWater(ws);
  carbonate(ws, mode);
  pairs(ws);
  strength(ws);
  alkalinityResidual(ws, mode);
}

function freeCations(ws: Workspace): void {
  const { molality: m, totals: t, conditional: c, hydrogen: h } = ws;
  const co3 = m[at.CO3]!;
  const so4 = m[at.SO4]!;
  const f = m[at.F]!;
  const ca =
    t[at.CA]! / (1 + co3 * (c[at.CACO3]! + c[at.CAHCO3]! * h) + so4 * c[at.CASO4]! + c[at.CAOH]! / h);
  const mg =
    t[at.MG]! /
    (1 + co3 * (c[at.MGCO3]! + c[at.MGHCO3]! * h) + so4 * c[at.MGSO4]! + f * c[at.MGF]! + c[at.MGOH]! / h);
  ws.change = Math.max(Math.abs(ca - m[at.CA]!) / (ca + 1e-30), Math.abs(mg - m[at.MG]!) / (mg + 1e-30));
  m[at.CA] = ca;
  m[at.MG] = mg;
  m[at.NA] = t[at.NA]! / (1 + co3 * (c[at.NACO3]! + c[at.NAHCO3]! * h) + so4 * c[at.NASO4]! + f * c[at.NAF]!);
  m[at.K] = t[at.K]! / (1 + so4 * c[at.KSO4]!);
}

function freeAnions(ws: Workspace): void {
  const { molality: m, totals: t, conditional: c, hydrogen: h } = ws;
  const ca = m[at.CA]!;
  const mg = m[at.MG]!;
  const na = m[at.NA]!;
  m[at.SO4] =
    t[at.SO4]! /
    (1 +
      ca * c[at.CASO4]! +
      mg * c[at.MGSO4]! +
      na * c[at.NASO4]! +
      m[at.K]! * c[at.KSO4]! +
      h * c[at.HSO4]!);
  m[at.F] = t[at.F]! / (1 + h * c[at.HF]! + mg * c[at.MGF]! + na * c[at.NAF]!);
  m[at.CL] = t[at.CL]!;
  m[at.NO3] = t[at.NO3]!;
}

function silicaAndWater(ws: Workspace): void {
  const { molality: m, totals: t, conditional: c, hydrogen: h } = ws;
  const first = c[at.H3SIO4]! / h;
  const second = c[at.H2SIO4]! / (h * h);
  const neutral = t[at.SI]! / (1 + first + second);
  m[at.SI] = neutral;
  m[at.H3SIO4] = neutral * first;
  m[at.H2SIO4] = neutral * second;
  m[at.OH] = c[at.OH]! / h;
  m[at.H] = h / ws.gamma[at.H]!;
  m[at.CAOH] = (c[at.CAOH]! / h) * m[at.CA]!;
  m[at.MGOH] = (c[at.MGOH]! / h) * m[at.MG]!;
  m[at.HSO4] = c[at.HSO4]! * h * m[at.SO4]!;
  m[at.HF] = c[at.HF]! * h * m[at.F]!;
}

/** Alkalinity held by anything but carbonate, eq/kg. */
export function otherAlkalinity(m: Float64Array): number {
  return (
    m[at.OH]! +
    m[at.CAOH]! +
    m[at.MGOH]! +
    m[at.H3SIO4]! +
    2 * m[at.H2SIO4]! -
    m[at.H]! -
    m[at.HSO4]! -
    m[at.HF]!
  );
}

function carbonate(ws: Workspace, mode: CarbonateMode): void {
  const { molality: m, conditional: c, hydrogen: h } = ws;
  const ca = m[at.CA]!;
  const mg = m[at.MG]!;
  const na = m[at.NA]!;
  const none = 1 + ca * c[at.CACO3]! + mg * c[at.MGCO3]! + na * c[at.NACO3]!;
  const one = h * (c[at.HCO3]! + ca * c[at.CAHCO3]! + mg * c[at.MGHCO3]! + na * c[at.NAHCO3]!);
  const two = h * h * c[at.CO2]!;
  let co3: number;
  if (mode === BY_ALKALINITY) co3 = Math.max(ws.alkalinity - otherAlkalinity(m), 0) / (2 * none + one);
  else if (mode === BY_CARBON) co3 = ws.carbon / (none + one + two);
  else co3 = ws.gasCo2Activity / (ws.gamma[at.SI]! * two);
  ws.change = Math.max(ws.change, Math.abs(co3 - m[at.CO3]!) / (co3 + 1e-30));
  m[at.CO3] = co3;
}

function pairs(ws: Workspace): void {
  const { molality: m, conditional: c, hydrogen: h } = ws;
  const co3 = m[at.CO3]!;
  const hco3 = h * co3;
  m[at.HCO3] = c[at.HCO3]! * hco3;
  m[at.CO2] = c[at.CO2]! * h * hco3;
  m[at.CACO3] = c[at.CACO3]! * m[at.CA]! * co3;
  m[at.CAHCO3] = c[at.CAHCO3]! * m[at.CA]! * hco3;
  m[at.MGCO3] = c[at.MGCO3]! * m[at.MG]! * co3;
  m[at.MGHCO3] = c[at.MGHCO3]! * m[at.MG]! * hco3;
  m[at.NACO3] = c[at.NACO3]! * m[at.NA]! * co3;
  m[at.NAHCO3] = c[at.NAHCO3]! * m[at.NA]! * hco3;
  const so4 = m[at.SO4]!;
  m[at.CASO4] = c[at.CASO4]! * m[at.CA]! * so4;
  m[at.MGSO4] = c[at.MGSO4]! * m[at.MG]! * so4;
  m[at.NASO4] = c[at.NASO4]! * m[at.NA]! * so4;
  m[at.KSO4] = c[at.KSO4]! * m[at.K]! * so4;
  m[at.MGF] = c[at.MGF]! * m[at.MG]! * m[at.F]!;
  m[at.NAF] = c[at.NAF]! * m[at.NA]! * m[at.F]!;
}

/** Highest ionic strength the activity model is asked for, mol/kg. */
const STRENGTH_LIMIT = 3;

function strength(ws: Workspace): void {
  const m = ws.molality;
  const twos = m[at.CA]! + m[at.MG]! + m[at.SO4]! + m[at.CO3]! + m[at.H2SIO4]!;
  const ones =
    m[at.NA]! +
    m[at.K]! +
    m[at.CL]! +
    m[at.NO3]! +
    m[at.F]! +
    m[at.HCO3]! +
    m[at.CAHCO3]! +
    m[at.MGHCO3]! +
    m[at.NACO3]! +
    m[at.NASO4]! +
    m[at.KSO4]! +
    m[at.HSO4]! +
    m[at.CAOH]! +
    m[at.MGOH]! +
    m[at.MGF]! +
    m[at.H3SIO4]! +
    m[at.OH]! +
    m[at.H]!;
  const neutrals = m[at.CO2]! + m[at.CACO3]! + m[at.MGCO3]! + m[at.NAHCO3]! + m[at.CASO4]! + m[at.MGSO4]!;
  const sum = twos + ones + neutrals + m[at.HF]! + m[at.NAF]! + m[at.SI]!;
  const next = Math.min(2 * twos + 0.5 * ones, STRENGTH_LIMIT);
  ws.change = Math.max(ws.change, Math.abs(next - ws.ionicStrength) / next);
  ws.ionicStrength = next;
  ws.waterActivity = Math.max(1 - 0.017 * sum, 0.5);
}

function alkalinityResidual(ws: Workspace, mode: CarbonateMode): void {
  const m = ws.molality;
  const none = m[at.CO3]! + m[at.CACO3]! + m[at.MGCO3]! + m[at.NACO3]!;
  const one = m[at.HCO3]! + m[at.CAHCO3]! + m[at.MGHCO3]! + m[at.NAHCO3]!;
  const carbon = none + one + m[at.CO2]!;
  ws.residual = 2 * none + one + otherAlkalinity(m) - ws.alkalinity;
  const protons = carbon > 0 ? (one + 2 * m[at.CO2]!) / carbon : 0;
  const carbonSlope = mode === BY_GAS ? -4 * none - one : -2 * none * protons + one * (1 - protons);
  const silica = m[at.SI]! + m[at.H3SIO4]! + m[at.H2SIO4]!;
  const lost = silica > 0 ? (m[at.H3SIO4]! + 2 * m[at.H2SIO4]!) / silica : 0;
  const silicaSlope = m[at.H3SIO4]! * (lost - 1) + 2 * m[at.H2SIO4]! * (lost - 2);
  ws.slope =
    carbonSlope + silicaSlope - (m[at.OH]! + m[at.CAOH]! + m[at.MGOH]! + m[at.H]! + m[at.HSO4]! + m[at.HF]!);
}
