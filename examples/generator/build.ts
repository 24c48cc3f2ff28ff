import type { Random } from "./random.ts";

/** How a unit is built: one element and one tank under air pressure, unless it says otherwise. */
export type Build = "plain" | "twoElements" | "twoTanks" | "vented" | "booster";

const RARER = ["twoElements", "twoTanks", "vented", "booster"] as const;

/** A small pump behind the filters, off when the feed is all but gone. */
export const BOOSTER = { shutOffRiseKPa: 180, openFlowLPerH: 320, offBelowKPaGauge: 70 } as const;

/** Mostly plain; the others only where no trouble is planted, so that what a trouble looks like stays the ordinary one. */
export const buildOf = (troubles: number, random: Random): Build =>
  troubles === 0 && random.chance(0.45) ? random.pick(RARER) : "plain";

/** What the label on the box says of it. */
export const buildFields = (build: Build) => ({
  ...(build === "twoElements" && { twoElements: true }),
  ...(build === "twoTanks" && { twoTanks: true }),
  ...(build === "vented" && { ventedTank: true }),
  ...(build === "booster" && {
    boosterShutOffRiseKPa: BOOSTER.shutOffRiseKPa,
    boosterOpenFlowLPerH: BOOSTER.openFlowLPerH,
    boosterOffBelowKPaGauge: BOOSTER.offBelowKPaGauge,
  }),
});
