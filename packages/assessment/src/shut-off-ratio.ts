import type { UnitFile } from "@tapside/records";
import { usualScatter, usualShutOffRatio, usualShutOffRatioWithPump } from "@tapside/reverse-osmosis";
import type { Context } from "./assessment.ts";

/** A pump that keeps the tank's pressure off the element; a vented tank has none to keep off. */
export const hasPermeatePump = ({ unit }: Pick<UnitFile, "unit">): boolean =>
  unit.permeatePump === true && !unit.ventedTank;

/** Where the shut-off closes: as the unit says, else as is usual. The company's own usual ratio is that of units without a permeate pump. */
export const shutOffRatioOf = (file: UnitFile, context: Context): number =>
  file.unit.shutOffRatio ??
  (hasPermeatePump(file)
    ? usualShutOffRatioWithPump.middle
    : (context.settings.shutOffRatio ?? usualShutOffRatio.middle));

/** How well that is known, one standard uncertainty. */
export const shutOffRatioU = (file: UnitFile): number =>
  hasPermeatePump(file) && file.unit.shutOffRatio === undefined
    ? usualShutOffRatioWithPump.u
    : usualScatter.shutOffRatio;
