import {
  COFFEE_LIMITS,
  COPPER_BRAZING_LIMITS,
  COPPER_LIMITS,
  SILICA_LIMITS,
  STEAM_LIMITS,
  type SteelGrade,
  steelChlorideLimit,
} from "./published-limits.ts";
import type { WaterLimit } from "./suits.ts";

/** What an appliance is and what its wetted parts are made of, as far as the label or manual says. */
export interface ApplianceMake {
  readonly name: string;
  readonly use: "coffee" | "steam" | "hot" | "cold";
  /** Hottest temperature the water meets. */
  readonly hottestC: number;
  readonly steel?: SteelGrade;
  readonly copperOrBrass?: boolean;
}

const BY_USE: Readonly<Record<ApplianceMake["use"], readonly WaterLimit[]>> = {
  coffee: COFFEE_LIMITS,
  steam: [...STEAM_LIMITS, ...SILICA_LIMITS],
  hot: SILICA_LIMITS,
  cold: [],
};

/**
 * The published needs of an appliance, beside what its own label asks: coffee standard, hardness in steam, silica,
 * chloride against steel grade and temperature, low-mineral water and free CO2 on copper and brass. Guidance, no
 * guarantee: the label and manual rule.
 *
 * Source: each limit carries its own. Range: kitchen appliances. Error: several are common practice only and say so.
 */
export function publishedNeeds(make: ApplianceMake): readonly WaterLimit[] {
  const steel = make.steel ? steelChlorideLimit(make.steel, make.hottestC) : undefined;
  const limits = [
    ...BY_USE[make.use],
    ...(steel?.kind === "known" ? [steel.value] : []),
    ...(make.copperOrBrass ? [...COPPER_LIMITS, ...COPPER_BRAZING_LIMITS] : []),
  ];
  return limits.map((limit) => ({ ...limit, appliance: make.name }));
}
