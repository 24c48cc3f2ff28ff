import type { Scatter } from "../expected-readings.ts";
import type { PermeatePump, Unit } from "../unit.ts";

/** How many standard deviations each property is off. */
export interface Draw {
  readonly water: number;
  readonly salt: number;
  readonly restrictor: number;
  readonly filter: number;
  readonly ratio: number;
  readonly charge: number;
  readonly blend: number;
  readonly stroke: number;
  readonly inlet: number;
  readonly pressure: number;
  readonly temperature: number;
  readonly solids: number;
}

export const middleDraw: Draw = {
  water: 0,
  salt: 0,
  restrictor: 0,
  filter: 0,
  ratio: 0,
  charge: 0,
  blend: 0,
  stroke: 0,
  inlet: 0,
  pressure: 0,
  temperature: 0,
  solids: 0,
};

/** Nothing but feed is no blend any more. */
const MOST_BLEND = 0.95;

const variedPump = (pump: PermeatePump, scatter: Scatter, draw: Draw): PermeatePump => ({
  ...pump,
  strokeRatio: pump.strokeRatio * Math.exp(draw.stroke * scatter.strokeRatioRelative),
  inletKPa: Math.max(0, pump.inletKPa + draw.inlet * scatter.pumpInletKPa),
});

/** The unit `draw` standard deviations off in each respect. */
export function variedUnit(unit: Unit, scatter: Scatter, draw: Draw): Unit {
  return {
    ...unit,
    cartridges: unit.cartridges.map((cartridge) => ({
      ...cartridge,
      dropKPa: cartridge.dropKPa * Math.exp(draw.filter * scatter.filterDropRelative),
    })),
    elements: unit.elements.map((element) => ({
      ...element,
      waterLPerM2HBar: element.waterLPerM2HBar * Math.exp(draw.water * scatter.waterRelative),
      saltLPerM2H: element.saltLPerM2H * Math.exp(draw.salt * scatter.saltRelative),
    })),
    restrictor: {
      ...unit.restrictor,
      scale: (unit.restrictor.scale ?? 1) * Math.exp(draw.restrictor * scatter.restrictorRelative),
    },
    ...(unit.blendFraction && {
      blendFraction: Math.min(MOST_BLEND, unit.blendFraction * Math.exp(draw.blend * scatter.blendRelative)),
    }),
    ...(unit.permeatePump && { permeatePump: variedPump(unit.permeatePump, scatter, draw) }),
    shutOff: { ...unit.shutOff, ratio: unit.shutOff.ratio + draw.ratio * scatter.shutOffRatio },
    tanks: unit.tanks.map((tank) => ({
      ...tank,
      airChargeKPaGauge: Math.max(0, tank.airChargeKPaGauge + draw.charge * scatter.airChargeKPa),
    })),
  };
}
