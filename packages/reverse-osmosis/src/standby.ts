import { known, type Outcome, refused } from "@tapside/quantities";
import { channelOf } from "./internal/elements-flow.ts";
import type { Unit } from "./unit.ts";

/**
 * Water held in one element for each m² of membrane, L/m². Source: common practice, no source: permeate carrier 0.2 to 0.3 mm and
 * feed spacer 0.6 to 0.8 mm thick, each shared by two membranes, mostly open; the core tube is counted to the permeate.
 */
export const usualHoldUp = {
  permeateLPerM2: { low: 0.06, middle: 0.11, high: 0.2 },
  feedLPerM2: { low: 0.25, middle: 0.32, high: 0.4 },
} as const;

export interface HoldUp {
  readonly permeateLPerM2: number;
  readonly feedLPerM2: number;
}

export interface Standby {
  /** On the permeate side, after standing. */
  readonly permeateMgPerL: number;
  readonly feedSideMgPerL: number;
  /** Where both sides would meet. */
  readonly equalMgPerL: number;
  /** Hours in which 63 % of the difference is gone. */
  readonly timeConstantHours: number;
  readonly permeateHeldL: number;
  readonly feedHeldL: number;
}

const middleHoldUp: HoldUp = {
  permeateLPerM2: usualHoldUp.permeateLPerM2.middle,
  feedLPerM2: usualHoldUp.feedLPerM2.middle,
};

export interface StandingStart {
  readonly hours: number;
  readonly temperatureC: number;
  /** When the flow stopped. */
  readonly permeateMgPerL: number;
  /** Mean along the feed side when the flow stopped. */
  readonly feedSideMgPerL: number;
  readonly holdUp?: HoldUp;
}

/**
 * Salt creep: while nothing flows, salt diffuses through the membrane until both sides are alike.
 *
 * Formula: dCp/dt = B·STCF·S(Cf − Cp)/Vp, salt of both sides together constant; time constant τ = 1/[B·STCF·S(1/Vp + 1/Vf)]
 * Source: solution–diffusion without water flow; creep named as a factor in WQA Education Kit Vol. X, Art. 4.
 * Range: check valve and shut-off hold, sides well mixed each.
 * Error: held volumes are common practice, so that τ is known to a factor of about 1.5.
 * @example
 * ```ts
 * import { simpleUnit, standby } from "@tapside/reverse-osmosis";
 * const unit = simpleUnit({ areaM2: 1, waterLPerM2HBar: 4, saltLPerM2H: 0.5 }, { ratedLPerH: 40, ratedKPa: 414 });
 * const start = { hours: 1000, temperatureC: 25, permeateMgPerL: 10, feedSideMgPerL: 400, holdUp: { permeateLPerM2: 0.1, feedLPerM2: 0.3 } };
 * const after = standby(unit, start);
 * after.kind === "known" ? after.value.permeateMgPerL : 0; // => 302.5
 * ```
 */
export function standby(unit: Unit, start: StandingStart): Outcome<Standby> {
  const { hours, temperatureC, permeateMgPerL, feedSideMgPerL, holdUp = middleHoldUp } = start;
  if (unit.elements.length === 0) return refused("no-element");
  if (!(hours >= 0)) return refused("out-of-range", { name: "hours", value: hours });
  const area = unit.elements.reduce((sum, element) => sum + element.areaM2, 0);
  const saltLPerH = unit.elements.reduce(
    (sum, element) => sum + channelOf(element, temperatureC, 1).saltLPerH,
    0,
  );
  const permeateHeldL = area * holdUp.permeateLPerM2;
  const feedHeldL = area * holdUp.feedLPerM2;
  if (!(permeateHeldL > 0 && feedHeldL > 0 && saltLPerH > 0)) return refused("no-element");
  const equalMgPerL =
    (permeateHeldL * permeateMgPerL + feedHeldL * feedSideMgPerL) / (permeateHeldL + feedHeldL);
  const timeConstantHours = 1 / (saltLPerH * (1 / permeateHeldL + 1 / feedHeldL));
  const left = Math.exp(-hours / timeConstantHours);
  return known({
    permeateMgPerL: equalMgPerL + (permeateMgPerL - equalMgPerL) * left,
    feedSideMgPerL: equalMgPerL + (feedSideMgPerL - equalMgPerL) * left,
    equalMgPerL,
    timeConstantHours,
    permeateHeldL,
    feedHeldL,
  });
}
