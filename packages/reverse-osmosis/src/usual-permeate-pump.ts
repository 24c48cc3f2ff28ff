import type { PermeatePump } from "./unit.ts";

/**
 * A permeate pump nobody has numbers of. Assumed, from no maker and no source: a ratio above 1 lifts to the feed's pressure, one above
 * the drain for each litre made does not keep up, and small units drain two to five times what they make.
 */
export const usualPermeatePump: PermeatePump = { strokeRatio: 2, lossKPa: 20, slip: 0.05, inletKPa: 20 };

/** How far such pumps are thought to scatter, one standard deviation; assumed like the pump itself. */
export const usualPermeatePumpScatter = { strokeRatioRelative: 0.25, inletKPa: 8 } as const;
