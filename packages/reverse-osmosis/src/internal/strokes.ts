import type { PermeatePump, Unit } from "../unit.ts";

/** A permeate pump's strokes against one pressure, and what they make of the drain. */
export interface Strokes {
  /** Taken from the concentrate while it pushes. */
  readonly driveKPa: number;
  /** Concentrate for a litre lifted. */
  readonly litresPerLitre: number;
  /** What runs to the drain while it pushes, L/h; nothing where the pressure does not lift. */
  readonly pushingLPerH: (concentrateKPa: number) => number;
  /** Mean flow to the drain over strokes and returns, L/h. */
  readonly drainLPerH: (concentrateKPa: number, permeateLPerH: number) => number;
}

/**
 * Force on the rod: ratio × drive = lift + loss. Volume: a litre lifted takes ratio/(1 − slip) litres of concentrate. For that share of its
 * water the restrictor has the drive against it, for the rest it runs free.
 */
export function strokesOf(pump: PermeatePump, through: (kPa: number) => number, liftKPa: number): Strokes {
  const driveKPa = (liftKPa + pump.lossKPa) / pump.strokeRatio;
  const litresPerLitre = pump.strokeRatio / (1 - pump.slip);
  const pushingLPerH = (kPa: number) => (kPa > driveKPa ? through(kPa - driveKPa) : 0);
  return {
    driveKPa,
    litresPerLitre,
    pushingLPerH,
    drainLPerH: (kPa, permeateLPerH) => {
      const pushing = pushingLPerH(kPa);
      const wanted = litresPerLitre * permeateLPerH;
      if (!(wanted < pushing)) return wanted > 0 ? pushing : through(kPa);
      const free = through(kPa);
      return free - (wanted / pushing) * (free - pushing);
    },
  };
}

/** Whether its parts let it lift at all: exchanged lines leave nothing that drives it. */
export const lifts = ({ permeatePump, linesReversed, storage }: Unit): boolean =>
  permeatePump !== undefined && !permeatePump.stuck && !linesReversed && storage !== "vented";

/** The most the permeate is brought to with nothing flowing: the feed's pressure, or what the pump makes of it. */
export const mostLiftKPa = (unit: Unit, deadHeadKPa: number): number =>
  unit.permeatePump && lifts(unit)
    ? Math.max(deadHeadKPa, unit.permeatePump.strokeRatio * deadHeadKPa - unit.permeatePump.lossKPa)
    : deadHeadKPa;
