import type { KeptVisit } from "@tapside/records";
import { confirmedIn } from "./answers-of.ts";
import type { CauseId } from "./causes.ts";
import type { Usual } from "./scene.ts";
import type { Readings, SignId } from "./signs.ts";

const PRESSURES: readonly SignId[] = ["staticPressure", "beforeFilterPressure"];
/** What a visit read of the supply while this was wrong is not what is usual there. */
const UNUSUAL: Readonly<Partial<Record<CauseId, readonly SignId[]>>> = {
  lowFeedPressure: PRESSURES,
  gaugeOff: PRESSURES,
  tdsMeterOff: ["feedTds"],
  meterScaleSlip: ["feedTds"],
  coldWater: ["temperature"],
};

/** The signs of an earlier visit without those its confirmed causes had spoilt. */
export function asUsual(signs: Readings, visit: KeptVisit): Readings {
  const spoilt = new Set(confirmedIn({ visit }).flatMap((cause) => UNUSUAL[cause] ?? []));
  return Object.fromEntries(Object.entries(signs).filter(([sign]) => !spoilt.has(sign as SignId)));
}

/** What stands where nothing was ever read. Assumed, common practice, no source. */
const NOTHING_KNOWN: Usual = {
  feedPressureKPaGauge: 400,
  staticPressureKPaGauge: 430,
  temperatureC: 15,
  feedMgPerL: 260,
  chlorineMgPerL: 0.8,
  hardnessMgPerL: 150,
};

/** Last known values, else today's: what has no history cannot be called changed. */
export function usualOf(earlier: readonly Readings[], today: Readings): Usual {
  const last = (sign: SignId) => {
    for (const one of earlier) if (one[sign] !== undefined) return one[sign];
    return today[sign];
  };
  const feed = last("beforeFilterPressure") ?? NOTHING_KNOWN.feedPressureKPaGauge;
  return {
    feedPressureKPaGauge: Math.max(60, feed),
    staticPressureKPaGauge: Math.max(60, last("staticPressure") ?? feed * 1.08),
    temperatureC: Math.min(30, Math.max(4, last("temperature") ?? NOTHING_KNOWN.temperatureC)),
    feedMgPerL: Math.max(5, last("feedTds") ?? NOTHING_KNOWN.feedMgPerL),
    chlorineMgPerL: last("chlorineBefore") ?? NOTHING_KNOWN.chlorineMgPerL,
    hardnessMgPerL: last("hardness") ?? NOTHING_KNOWN.hardnessMgPerL,
  };
}
