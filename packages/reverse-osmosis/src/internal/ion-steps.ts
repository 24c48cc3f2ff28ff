import type { ConservedWater, Rejections } from "@tapside/water";
import type { FlowingPoint } from "../operating-point.ts";
import type { Conditions, Unit } from "../unit.ts";
import { wallState } from "./along-element.ts";
import { channelOf } from "./elements-flow.ts";

export type IonTotals = Record<keyof ConservedWater["totals"], number>;

/** A stream: L/h, and per hour what it carries in mol (eq). */
export interface IonFlows {
  readonly flow: number;
  readonly totals: IonTotals;
  readonly alkalinity: number;
}

const charge: IonTotals = { Ca: 2, Mg: 2, Na: 1, K: 1, Cl: -1, SO4: -2, NO3: -1, F: -1, SiO2: 0 };
const ids = Object.keys(charge) as (keyof IonTotals)[];
const steps = 48;
const kept = 4;

const relative = (rejection: number, chloride: number) =>
  ((1 - rejection) / rejection) * (chloride / (1 - chloride));

/**
 * All elements as one channel of their summed area, in plug flow; per ion the same law as for sodium chloride with its own B. Parallel and series differ
 * only in friction here.
 */
export function stepIons(
  unit: Unit,
  conditions: Conditions,
  point: FlowingPoint,
  feed: ConservedWater,
  rejections: Rejections,
): { readonly places: readonly IonFlows[]; readonly permeate: IonFlows } {
  const channels = unit.elements.map((element) => channelOf(element, conditions.temperatureC, steps));
  const [first] = channels;
  const sum = (key: "waterLPerHKPa" | "saltLPerH") => channels.reduce((all, one) => all + one[key], 0);
  const channel = { ...first!, waterLPerHKPa: sum("waterLPerHKPa"), saltLPerH: sum("saltLPerH") };
  const back = unit.linesReversed ? 0 : point.permeatePressureKPaGauge;
  const driveAt = (share: number) =>
    point.elementPressureKPaGauge -
    share * (point.elementPressureKPaGauge - point.concentratePressureKPaGauge) -
    back;
  const beta = channel.polarisation;
  let flow = point.feedLPerH;
  let salt = flow * conditions.feedMgPerL;
  const totals = scaledTotals(feed.totals, flow);
  let alkalinity = feed.alkalinityEqPerKg * flow;
  const passed = { flow: 0, totals: scaledTotals(feed.totals, 0), alkalinity: 0 };
  const places: IonFlows[] = [{ flow, totals: { ...totals }, alkalinity }];
  for (let i = 0; i < steps; i++) {
    const wall = wallState(channel, salt / flow, Math.max(1e-6, driveAt((i + 0.5) / steps)), 0);
    const step = Math.min(wall.fluxLPerH / steps, 0.5 * flow);
    /** Permeate over bulk concentration of a solute with this B against that of chloride. */
    const through = (rejection: number) => {
      const b = channel.saltLPerH * relative(rejection, rejections.Cl);
      const passing = b / (wall.fluxLPerH + b);
      return (passing * beta) / (1 + passing * (beta - 1));
    };
    const share = step / flow;
    let anions = 0;
    for (const id of ids) {
      if (id === "Na") continue;
      const amount = Math.min(totals[id], totals[id] * share * through(rejections[id]));
      totals[id] -= amount;
      passed.totals[id] += amount;
      anions -= charge[id] * amount;
    }
    const alk = alkalinity * share * through(rejections.alkalinity);
    alkalinity -= alk;
    passed.alkalinity += alk;
    const sodium = Math.max(0, Math.min(totals.Na, anions + alk));
    totals.Na -= sodium;
    passed.totals.Na += sodium;
    passed.flow += step;
    flow -= step;
    salt -= step * wall.permeateMgPerL;
    if ((i + 1) % kept === 0) places.push({ flow, totals: { ...totals }, alkalinity });
  }
  return { places, permeate: passed };
}

const scaledTotals = (totals: ConservedWater["totals"], flow: number): IonTotals =>
  Object.fromEntries(ids.map((id) => [id, totals[id] * flow])) as IonTotals;
