import { mapOutcome } from "@tapside/quantities";
import { type ConservedWater, MOLAR_MASS } from "../analysis.ts";
import { conductivityAt25 } from "../conductivity.ts";
import { hardnessFromIons } from "../hardness.ts";
import { speciateConserved } from "../speciate.ts";
import type { Dosed, WaterLimit } from "../suits.ts";
import { tdsOnScale } from "../tds-scale.ts";
import type { Water } from "../water.ts";

const mgPerL = (water: ConservedWater, id: "Ca" | "Mg" | "Cl" | "SO4" | "Na" | "SiO2") =>
  water.totals[id] * MOLAR_MASS[id] * 1000;

const HOT_C = 100;

function hotIndex(water: Water, hotC: number): number {
  const hot = speciateConserved({ ...water, temperatureC: hotC });
  return hot.kind === "known" ? hot.value.saturation.calcite : Number.NaN;
}

function onMeter(water: Water): number {
  const shown = mapOutcome(conductivityAt25(water), (ec) => tdsOnScale(ec, "442"));
  return shown.kind === "known" ? shown.value.value : Number.NaN;
}

/** A value known only from below tells where it is above the limit already. */
const atLeast = (least: number | undefined, { high }: WaterLimit) =>
  least !== undefined && high !== undefined && least > high ? least : Number.NaN;

/** A property of a solved water in the unit of its limits; NaN where the water has no answer for it. */
export function propertyOf(water: Water, limit: WaterLimit, dosed: Dosed): number {
  if (dosed.unread?.has(limit.property)) return Number.NaN;
  switch (limit.property) {
    case "calcium":
      return mgPerL(water, "Ca");
    case "hardness":
      return hardnessFromIons(mgPerL(water, "Ca"), mgPerL(water, "Mg"));
    case "calciumHardness":
      return hardnessFromIons(mgPerL(water, "Ca"), 0);
    case "alkalinity":
      return water.alkalinityEqPerKg * 50050;
    case "chloride":
      return mgPerL(water, "Cl");
    case "sulfate":
      return mgPerL(water, "SO4");
    case "sodium":
      return mgPerL(water, "Na");
    case "silica":
      return mgPerL(water, "SiO2");
    case "freeCo2":
      return water.molality.CO2 * 44009.5;
    case "pH":
      return water.pH;
    case "conductivity25": {
      const ec = conductivityAt25(water);
      return ec.kind === "known" ? ec.value : Number.NaN;
    }
    case "calciteIndexHot":
      return hotIndex(water, limit.hotC ?? HOT_C);
    case "tds442":
      return onMeter(water);
    case "totalChlorine":
      return dosed.totalChlorineMgPerL ?? atLeast(dosed.leastChlorineMgPerL, limit);
  }
}

/** Whether a value lies between a limit's ends. */
export const keeps = (value: number, { low, high }: WaterLimit) =>
  value >= (low ?? Number.NEGATIVE_INFINITY) && value <= (high ?? Number.POSITIVE_INFINITY);

/** Share of samples above which a limit counts as kept, and below whose complement as broken. */
export const SURE = 0.95;
