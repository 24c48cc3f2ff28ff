import { type Restrictor, restrictorLPerH } from "../restrictor.ts";
import type { Unit } from "../unit.ts";
import { bracketedRoot } from "./bracketed-root.ts";
import { tubesLossKPa } from "./tubes-loss.ts";

const followsRoot = (r: Restrictor) =>
  r.kind === "rated" || r.kind === "orifice" || (r.kind === "measured" && r.law === "orifice");

/** Flow through restrictor, obstruction and drain tubes in series at a pressure before them, L/h. */
export function drainSide(unit: Unit, temperatureC: number): (pressureKPa: number) => number {
  const { restrictor, drainObstruction: obstruction, drainTubes: tubes } = unit;
  const open = (pressureKPa: number) => restrictorLPerH(restrictor, pressureKPa, temperatureC);
  if (!obstruction && !tubes?.length) return open;
  const behind = (pressureKPa: number) =>
    obstruction ? restrictorLPerH(obstruction, pressureKPa, temperatureC) : Number.POSITIVE_INFINITY;
  if (obstruction && !tubes?.length && followsRoot(restrictor) && followsRoot(obstruction))
    return (pressureKPa) => inSeries(open(pressureKPa), behind(pressureKPa));
  return (pressureKPa) => settled(open, behind, pressureKPa, (q) => tubesLossKPa(tubes ?? [], q, temperatureC));
}

/** Two losses that both grow with the square of the flow add: 1/q² = 1/q₁² + 1/q₂². */
const inSeries = (one: number, other: number) =>
  one > 0 && other > 0 ? (one * other) / Math.hypot(one, other) : 0;

function settled(
  open: (kPa: number) => number,
  behind: (kPa: number) => number,
  pressureKPa: number,
  tubesKPa: (flowLPerH: number) => number,
): number {
  const most = Math.min(open(pressureKPa), behind(pressureKPa));
  if (!(most > 0)) return 0;
  const excess = (q: number) => {
    const left = pressureKPa - tubesKPa(q);
    return left > 0 ? betweenLPerH(open, behind, left) - q : -q;
  };
  const root = bracketedRoot(excess, 0, most, { x: 1e-13 * most, f: 1e-12 * most });
  return root.kind === "no-sign-change" ? 0 : root.x;
}

/** Restrictor and obstruction share the pressure: the flow at which both pass the same. */
function betweenLPerH(open: (kPa: number) => number, behind: (kPa: number) => number, kPa: number): number {
  if (behind(kPa) === Number.POSITIVE_INFINITY) return open(kPa);
  const root = bracketedRoot((p) => open(p) - behind(kPa - p), 0, kPa, { x: 1e-13 * kPa, f: 1e-12 * open(kPa) });
  return root.kind === "no-sign-change" ? 0 : open(root.x);
}
