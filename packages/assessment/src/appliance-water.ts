import type { UnitFile } from "@tapside/records";
import {
  type ApplianceMake,
  convertTdsScale,
  type LimitAnswer,
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

export type BlankField =
  | "appliance.hottestC"
  | "appliance.steelGrade"
  | "appliance.copperOrBrass"
  /** Hotter than the table of chloride goes for the steel. */
  | "steelTable";

/** Every make the blanks of an appliance's record leave open; one where nothing is blank. */
export function possibleMakes(appliance: KeptAppliance): PossibleMakes {
  const { hottestC, steelGrade, copperOrBrass } = appliance;
  const make = applianceMake(appliance);
  const [, , span] = USUAL[appliance.type ?? "other"] ?? USUAL.other!;
  const temperatures = hottestC === undefined ? span : [hottestC];
  const steels = steelGrade ? [steelGrade] : (["304", "316"] as const);
  const coppers = copperOrBrass === undefined ? [false, true] : [copperOrBrass];
  const makes = temperatures.flatMap((hottest) =>
    steels.flatMap((steel) =>
      coppers.map((copper) => ({ ...make, hottestC: hottest, steel, copperOrBrass: copper })),
    ),
  );
  return {
    makes,
    blank: [
      ...(hottestC === undefined && steels.some((steel) => temperatureTells(steel, span))
        ? (["appliance.hottestC"] as const)
        : []),
      ...(steelGrade ? [] : (["appliance.steelGrade"] as const)),
      ...(copperOrBrass === undefined ? (["appliance.copperOrBrass"] as const) : []),
      ...(makes.some(beyondItsTable) ? (["steelTable"] as const) : []),
    ],
  };
}

const beyondItsTable = ({ steel, hottestC }: ApplianceMake) =>
  steel !== undefined && steelChlorideLimit(steel, hottestC).kind !== "known";

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

/** One need with every limit the possible makes set for it. */
interface PossibleNeed {
  readonly limits: readonly WaterLimit[];
  /** Only an appliance with copper or brass in it has this need. */
  readonly onlyOnCopper: boolean;
}

/** The published needs an appliance may have, as far as its record tells. */
export function possibleNeeds(appliance: KeptAppliance): readonly PossibleNeed[] {
  const byNeed = new Map<string, PossibleNeed>();
  for (const make of possibleMakes(appliance).makes)
    for (const limit of publishedNeeds(make)) {
      const key = `${limit.property} ${limit.source}`;
      const { limits, onlyOnCopper } = byNeed.get(key) ?? { limits: [], onlyOnCopper: true };
      const there = limits.some(({ low, high }) => low === limit.low && high === limit.high);
      byNeed.set(key, {
        limits: there ? limits : [...limits, limit],
        onlyOnCopper: onlyOnCopper && make.copperOrBrass === true,
      });
    }
  return [...byNeed.values()];
}

/** A limit as strict as an appliance's record leaves possible, and as loose; no `loosest` where it may have none. */
export interface LeftOpen {
  readonly strictest: WaterLimit;
  readonly loosest?: WaterLimit;
}

function leftOpen({ limits, onlyOnCopper }: PossibleNeed, copperOrBrass: boolean | undefined): LeftOpen {
  const byHigh = [...limits].sort((a, b) => (a.high ?? 0) - (b.high ?? 0));
  const [strictest, loosest] = [byHigh[0]!, byHigh[byHigh.length - 1]!];
  return onlyOnCopper && copperOrBrass === undefined ? { strictest } : { strictest, loosest };
}

/** Every limit on the water of an appliance: its label's own first, then the published needs of what it may be made of. */
export const waterLimitsOf = (appliance: KeptAppliance): readonly LeftOpen[] => [
  ...appliance.limits
    .flatMap((limit) => labelLimit(limit, appliance.name ?? ""))
    .map((limit) => ({ strictest: limit, loosest: limit })),
  ...possibleNeeds(appliance).map((need) => leftOpen(need, appliance.copperOrBrass)),
];

/** One answer to what a record leaves open: kept at its strictest, broken at its loosest, otherwise not to be told. */
export function answerLeftOpen(
  { strictest, loosest }: LeftOpen,
  answerTo: (limit: WaterLimit) => LimitAnswer,
): LimitAnswer {
  const first = answerTo(strictest);
  if (first.answer === "within" || strictest === loosest) return first;
  const last = loosest && answerTo(loosest);
  return last?.answer === "outside" ? last : { ...first, answer: "cannot-tell" };
}
