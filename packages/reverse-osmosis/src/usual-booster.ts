import type { Booster } from "./unit.ts";

/** The pump that is tried where none is named: a common small booster, 36 psi of rise at no flow. Common practice, no source. */
export const usualBooster: Booster = { shutOffRiseKPa: 250, openFlowLPerH: 300 };
