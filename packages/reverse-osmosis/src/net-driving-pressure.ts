/** All in one pressure unit. */
export interface Drive {
  readonly feed: number;
  /** Feed to concentrate, along the vessel. */
  readonly vesselDrop: number;
  readonly permeate: number;
  readonly osmoticFeedBrine: number;
  readonly osmoticPermeate: number;
}

/**
 * Net driving pressure, in the unit of its inputs.
 *
 * Formula: Pf − ΔP/2 − Pp − (π_fb − π_p)
 * Source: ASTM D4516-19a, 6.1, as printed in a public guide to the standard.
 * Range: high rejection, no significant leak.
 * Error: that of its inputs.
 * @example
 * ```ts
 * import { netDrivingPressure } from "@tapside/reverse-osmosis";
 * netDrivingPressure({ feed: 60, vesselDrop: 2, permeate: 20, osmoticFeedBrine: 5, osmoticPermeate: 0 }); // => 34
 * ```
 */
export const netDrivingPressure = (drive: Drive): number =>
  drive.feed - drive.vesselDrop / 2 - drive.permeate - (drive.osmoticFeedBrine - drive.osmoticPermeate);
