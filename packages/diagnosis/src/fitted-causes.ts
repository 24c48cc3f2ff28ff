import type { CauseId } from "./causes.ts";
import type { FitCheck } from "./misfit.ts";
import type { Scene } from "./scene.ts";
import { type Readings, SIGN_IDS, type SignId } from "./signs.ts";
import { type CauseSize, sizeOfCause } from "./size-of-cause.ts";
import { slotToRead } from "./slot-of-sign.ts";

/** A cause as it fits the readings best: its size, and what it would read beside what was read. */
export interface FittedCause {
  readonly size: CauseSize | undefined;
  readonly beside: readonly {
    readonly sign: SignId;
    /** Absent: not read. */
    readonly read: number | undefined;
    readonly wouldRead: number;
  }[];
}

export type FittedCauses = Readonly<Partial<Record<CauseId, FittedCause>>>;

/** Of every cause that was fitted: alone where it was tried alone, else with its partner. Everything read is told, and every port. */
export function fittedCauses(scene: Scene, { fits }: FitCheck, readings: Readings): FittedCauses {
  const fitted: Partial<Record<CauseId, FittedCause>> = {};
  for (const fit of [...fits].sort((a, b) => a.causes.length - b.causes.length))
    for (const cause of fit.causes)
      fitted[cause] ??= {
        size: sizeOfCause(cause, fit, scene),
        beside: SIGN_IDS.filter((sign) => readings[sign] !== undefined || slotToRead(sign)).map((sign) => ({
          sign,
          read: readings[sign],
          wouldRead: fit.wouldRead[sign],
        })),
      };
  return fitted;
}
