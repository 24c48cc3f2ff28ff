import type { UnitFile } from "@tapside/records";
import {
  type ApplianceMake,
  convertTdsScale,
  publishedNeeds,
  steelChlorideLimit,
  type WaterLimit,
} from "@tapside/water";

type KeptAppliance = UnitFile["appliances"][number];
type KeptLimit = KeptAppliance["limits"][number];

/** Use, hottest water and how much hotter or cooler a kind may be where the record does not say. Common practice, no source. */
const USUAL: Readonly<
  Record<string, readonly [use: ApplianceMake["use"], hottestC: number, span: readonly [number, number]]>
> = {
  combiOven: ["steam", 100, [100, 120]],
  steamer: ["steam", 100, [100, 120]],
  coffee: ["coffee", 95, [90, 120]],
  dispenser: ["hot", 95, [60, 100]],
  dishwasher: ["hot", 80, [55, 90]],
  ice: ["cold", 15, [15, 25]],
  other: ["cold", 20, [15, 120]],
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

/** What an appliance may be made of where its record does not say, and which of its fields are blank. */
export interface PossibleMakes {
  readonly makes: readonly ApplianceMake[];
  /** Names of the blank fields an answer may hang on, as `missing` tells them. */
  readonly blank: readonly BlankField[];
}

export type BlankField = "appliance.hottestC" | "appliance.steelGrade" | "appliance.copperOrBrass";

/** Every make the blanks of an appliance's record leave open; one where nothing is blank. */
export function possibleMakes(appliance: KeptAppliance): PossibleMakes {
  const { hottestC, steelGrade, copperOrBrass } = appliance;
  const make = applianceMake(appliance);
  const [, , span] = USUAL[appliance.type ?? "other"] ?? USUAL.other!;
  const temperatures = hottestC === undefined ? span : [hottestC];
  const steels = steelGrade ? [steelGrade] : (["304", "316"] as const);
  const coppers = copperOrBrass === undefined ? [false, true] : [copperOrBrass];
  return {
    makes: temperatures.flatMap((hottest) =>
      steels.flatMap((steel) =>
        coppers.map((copper) => ({ ...make, hottestC: hottest, steel, copperOrBrass: copper })),
      ),
    ),
    blank: [
      ...(hottestC === undefined && steels.some((steel) => temperatureTells(steel, span))
        ? (["appliance.hottestC"] as const)
        : []),
      ...(steelGrade ? [] : (["appliance.steelGrade"] as const)),
      ...(copperOrBrass === undefined ? (["appliance.copperOrBrass"] as const) : []),
    ],
  };
}

/** Whether a steel's chloride limit hangs on where in its span an appliance's hottest water lies. */
function temperatureTells(steel: "304" | "316", span: readonly [number, number]): boolean {
  const [cool, hot] = span.map((temperatureC) => steelChlorideLimit(steel, temperatureC));
  return cool?.kind !== "known" || hot?.kind !== "known" || cool.value.high !== hot.value.high;
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
