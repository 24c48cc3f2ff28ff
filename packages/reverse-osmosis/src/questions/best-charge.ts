import { known, type Outcome, refused } from "@tapside/quantities";
import type { Interval } from "../expected-readings.ts";
import { usualShutOffRatio } from "../shut-off.ts";
import { bestAirChargeKPaGauge, type Tank, usableLitres } from "../tank.ts";

export interface BestCharge {
  readonly chargeKPaGauge: number;
  /** Litres above the appliance's minimum at that charge; the interval is that of the shut-off's ratio, 0.60 to 0.67 when it is not known. */
  readonly usableL: Interval;
  /** The same with the charge as it is. */
  readonly usableNowL: Interval;
  /** "better": clearly more than now. "same": within a twentieth. "cannotTell": the intervals decide nothing. */
  readonly verdict: "better" | "same" | "cannotTell";
}

export interface ChargeQuestion {
  readonly tank: Tank;
  /** Standing feed pressure: the shut-off's ratio is of this. */
  readonly feedKPaGauge: number;
  readonly minimumKPaGauge: number;
  readonly atmosphericKPa: number;
  /** Ratio of this very valve; the usual range when not given. */
  readonly shutOffRatio?: { readonly value: number; readonly u: number };
}

/**
 * Best air charge for this feed and the appliance's minimum pressure, and what it brings.
 *
 * Formula: charge = minimum − 2 psi; litres by Boyle between the full pressure (ratio × feed) and the minimum
 * Source: `bestAirChargeKPaGauge`, `usableLitres`; ratio 0.60 to 0.67: common practice.
 * Range: full pressure above the minimum, else refused with both numbers.
 * Error: that of the ratio; slow draws.
 * @example
 * ```ts
 * import { bestCharge } from "@tapside/reverse-osmosis";
 * const tank = { volumeL: 53, airChargeKPaGauge: 25.5 };
 * const asked = bestCharge({ tank, feedKPaGauge: 448.2, minimumKPaGauge: 137.9, atmosphericKPa: 101.325 });
 * asked.kind === "known" ? asked.value.chargeKPaGauge : 0; // => 124.1
 * ```
 */
export function bestCharge(question: ChargeQuestion): Outcome<BestCharge> {
  const { tank, feedKPaGauge, minimumKPaGauge, atmosphericKPa, shutOffRatio } = question;
  const { low, middle, high } = shutOffRatio
    ? {
        low: shutOffRatio.value - 1.96 * shutOffRatio.u,
        middle: shutOffRatio.value,
        high: shutOffRatio.value + 1.96 * shutOffRatio.u,
      }
    : usualShutOffRatio;
  const best = bestAirChargeKPaGauge({ minimumKPaGauge, fullKPaGauge: middle * feedKPaGauge });
  if (best.kind !== "known")
    return refused("minimum-above-full", { minimumKPaGauge, fullKPaGauge: middle * feedKPaGauge });
  const litres = (airChargeKPaGauge: number): Interval => {
    const at = (ratio: number) =>
      usableLitres(
        { ...tank, airChargeKPaGauge },
        { fullKPaGauge: ratio * feedKPaGauge, minimumKPaGauge },
        atmosphericKPa,
      );
    return { low: at(low), value: at(middle), high: at(high) };
  };
  const usableL = litres(best.value);
  const usableNowL = litres(tank.airChargeKPaGauge);
  return known({ chargeKPaGauge: best.value, usableL, usableNowL, verdict: verdictOf(usableNowL, usableL) });
}

const sameShare = 0.05;

/** The valve is the same before and after, so ends of the intervals are compared pairwise. */
function verdictOf(now: Interval, then: Interval): BestCharge["verdict"] {
  if (Math.abs(then.value - now.value) <= sameShare * then.value) return "same";
  return then.low > now.low && then.value > now.value && then.high > now.high ? "better" : "cannotTell";
}
