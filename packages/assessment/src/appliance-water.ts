import type { UnitFile } from "@tapside/records";
import { type ApplianceMake, convertTdsScale, publishedNeeds, type WaterLimit } from "@tapside/water";

type KeptAppliance = UnitFile["appliances"][number];
type KeptLimit = KeptAppliance["limits"][number];

/** Use and hottest water of each kind where the record does not say. Common practice, no source. */
const USUAL: Readonly<Record<string, readonly [use: ApplianceMake["use"], hottestC: number]>> = {
  combiOven: ["steam", 100],
  steamer: ["steam", 100],
  coffee: ["coffee", 95],
  dispenser: ["hot", 95],
  dishwasher: ["hot", 80],
  ice: ["cold", 15],
  other: ["cold", 20],
};

/** An appliance's make as far as its record says, its kind's usual otherwise. */
export function applianceMake(appliance: KeptAppliance): ApplianceMake {
  const [use, usualC] = USUAL[appliance.type ?? "other"] ?? USUAL.other!;
  return {
    name: appliance.name ?? "",
    use,
    hottestC: appliance.hottestC ?? usualC,
    ...(appliance.steelGrade && { steel: appliance.steelGrade }),
    ...(appliance.copperOrBrass && { copperOrBrass: true }),
  };
}

const PROPERTY = {
  tds: ["tds442", "ppm 442"],
  hardness: ["hardness", "mg/L CaCO3"],
  alkalinity: ["alkalinity", "mg/L CaCO3"],
  chloride: ["chloride", "mg/L"],
  chlorine: ["totalChlorine", "mg/L"],
  silica: ["silica", "mg/L"],
  pH: ["pH", "pH"],
} as const;

function onScale442(value: number | undefined, limit: KeptLimit): number | undefined {
  if (value === undefined || (limit.quantity ?? "tds") !== "tds") return value;
  const shown = convertTdsScale(value, limit.scale ?? "NaCl", "442");
  return shown.kind === "known" ? Number(shown.value.value.toPrecision(3)) : value;
}

function labelLimit(limit: KeptLimit, appliance: string): WaterLimit[] {
  const [low, high] = [onScale442(limit.low, limit), onScale442(limit.high, limit)];
  if (low === undefined && high === undefined) return [];
  const [property, unit] = PROPERTY[limit.quantity ?? "tds"];
  return [
    {
      property,
      ...(low !== undefined && { low }),
      ...(high !== undefined && { high }),
      unit,
      source: limit.source ?? "",
      appliance,
    },
  ];
}

/** Every limit on the water of an appliance: its label's own first, then the published needs of what it is made of. */
export const waterLimitsOf = (appliance: KeptAppliance): readonly WaterLimit[] => [
  ...appliance.limits.flatMap((limit) => labelLimit(limit, appliance.name ?? "")),
  ...publishedNeeds(applianceMake(appliance)),
];
