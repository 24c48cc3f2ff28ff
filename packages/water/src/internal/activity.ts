import { PLACES } from "./layout.ts";
import type { Workspace } from "./workspace.ts";

const at = PLACES;

/**
 * Activity coefficients at the workspace's ionic strength, and conditional constants in molalities.
 * log γ = −A z² √I/(1 + B å √I) + b I; Davies for the species without å; 0.1 I for neutral ones.
 */
export function updateActivities(ws: Workspace): void {
  const strength = ws.ionicStrength;
  if (Math.abs(strength - ws.strengthOfGammas) <= 1e-11 * strength) return;
  ws.strengthOfGammas = strength;
  const { gamma: g, debyeA, debyeB } = ws;
  const root = Math.sqrt(strength);
  const top = -Math.LN10 * debyeA * root;
  const bRoot = debyeB * root;
  const linear = Math.LN10 * strength;
  g[at.CA] = Math.exp((4 * top) / (1 + 5 * bRoot) + 0.165 * linear);
  g[at.MG] = Math.exp((4 * top) / (1 + 5.5 * bRoot) + 0.2 * linear);
  g[at.NA] = Math.exp(top / (1 + 4.08 * bRoot) + 0.082 * linear);
  g[at.K] = Math.exp(top / (1 + 3.5 * bRoot) + 0.015 * linear);
  g[at.SO4] = Math.exp((4 * top) / (1 + 5 * bRoot) - 0.04 * linear);
  g[at.H] = Math.exp(top / (1 + 9 * bRoot));
  const bicarbonate = Math.exp(top / (1 + 5.4 * bRoot));
  g[at.HCO3] = g[at.NASO4] = g[at.KSO4] = bicarbonate;
  g[at.CO3] = g[at.H2SIO4] = bicarbonate * bicarbonate * bicarbonate * bicarbonate;
  g[at.F] = g[at.OH] = Math.exp(top / (1 + 3.5 * bRoot));
  g[at.MGHCO3] = g[at.H3SIO4] = Math.exp(top / (1 + 4 * bRoot));
  g[at.CAHCO3] = Math.exp(top / (1 + 6 * bRoot));
  g[at.MGOH] = Math.exp(top / (1 + 6.5 * bRoot));
  g[at.MGF] = Math.exp(top / (1 + 4.5 * bRoot));
  g[at.CAOH] = g[at.HSO4] = g[at.NACO3] = Math.exp(top / (1 + root) + 0.3 * debyeA * linear);
  g[at.SI] = Math.exp(0.1 * linear);
  conditionalConstants(ws);
}

function conditionalConstants(ws: Workspace): void {
  const { gamma: g, k, conditional: c } = ws;
  const water = ws.waterActivity;
  const neutral = g[at.SI]!;
  const gCo3 = g[at.CO3]!;
  const gCa = g[at.CA]!;
  const gMg = g[at.MG]!;
  const gNa = g[at.NA]!;
  const gSo4 = g[at.SO4]!;
  const gF = g[at.F]!;
  c[at.HCO3] = (k[at.HCO3]! * gCo3) / g[at.HCO3]!;
  c[at.CO2] = (k[at.CO2]! * gCo3) / (neutral * water);
  c[at.CACO3] = (k[at.CACO3]! * gCa * gCo3) / neutral;
  c[at.CAHCO3] = (k[at.CAHCO3]! * gCa * gCo3) / g[at.CAHCO3]!;
  c[at.MGCO3] = (k[at.MGCO3]! * gMg * gCo3) / neutral;
  c[at.MGHCO3] = (k[at.MGHCO3]! * gMg * gCo3) / g[at.MGHCO3]!;
  c[at.NACO3] = (k[at.NACO3]! * gNa * gCo3) / g[at.NACO3]!;
  c[at.NAHCO3] = (k[at.NAHCO3]! * gNa * gCo3) / neutral;
  c[at.CASO4] = (k[at.CASO4]! * gCa * gSo4) / neutral;
  c[at.MGSO4] = (k[at.MGSO4]! * gMg * gSo4) / neutral;
  c[at.NASO4] = (k[at.NASO4]! * gNa * gSo4) / g[at.NASO4]!;
  c[at.KSO4] = (k[at.KSO4]! * g[at.K]! * gSo4) / g[at.KSO4]!;
  c[at.HSO4] = (k[at.HSO4]! * gSo4) / g[at.HSO4]!;
  c[at.CAOH] = (k[at.CAOH]! * gCa * water) / g[at.CAOH]!;
  c[at.MGOH] = (k[at.MGOH]! * gMg * water) / g[at.MGOH]!;
  c[at.HF] = (k[at.HF]! * gF) / neutral;
  c[at.MGF] = (k[at.MGF]! * gMg * gF) / g[at.MGF]!;
  c[at.NAF] = (k[at.NAF]! * gNa * gF) / neutral;
  c[at.H3SIO4] = (k[at.H3SIO4]! * neutral) / g[at.H3SIO4]!;
  c[at.H2SIO4] = (k[at.H2SIO4]! * neutral) / g[at.H2SIO4]!;
  c[at.OH] = (k[at.OH]! * water) / g[at.OH]!;
}
