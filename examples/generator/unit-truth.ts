import { type Build, buildOf } from "./build.ts";
import { dayAfter, daysBetween, workday } from "./calendar.ts";
import { KITCHENS, MAINS, type Main } from "./places.ts";
import type { PlateId } from "./plates.ts";
import { type Random, randomOf, shuffled } from "./random.ts";
import { PLANTED, sizeOf, type Trouble, type TroubleId } from "./troubles.ts";

export const LAST_DAY = "2026-11-20";

/** What is true of a unit and nobody reads off a label. */
export interface UnitTruth {
  readonly key: string;
  readonly kitchen: number;
  readonly plate: PlateId;
  readonly build: Build;
  readonly tankL: number;
  readonly begins: string;
  /** Its first visit is its commissioning; else it hung there before the book began. */
  readonly commissioned: boolean;
  /** Against the label: water and salt permeability, restrictor. */
  readonly water: number;
  readonly salt: number;
  readonly restrictor: number;
  readonly filterDropKPa: number;
  readonly shutOffRatio: number;
  readonly chargePsi: number;
  readonly pressurePsi: number;
  /** A year: water permeability lost, salt permeability gained, charge lost. */
  readonly waterLost: number;
  readonly saltGained: number;
  readonly chargeLostPsi: number;
  /** m³ of feed in which a clean filter's drop doubles. */
  readonly filterLifeM3: number;
  readonly permeateLPerDay: number;
  readonly minimumPsi: number;
  readonly portsAbsent: readonly string[];
  readonly remineraliser: boolean;
  readonly troubles: readonly Trouble[];
}

export const mainOf = (unit: UnitTruth): Main => MAINS[KITCHENS[unit.kitchen]![1]];

/** All generated units of the district, the same for the same seed. */
export function unitTruths(seed: string): readonly UnitTruth[] {
  const places = KITCHENS.flatMap(([, , units], kitchen) => Array.from({ length: units }, () => kitchen));
  const plan = troublePlan(places.length, seed);
  return places.map((kitchen, i) => unitTruth(seed, `demo:${i + 11}`, kitchen, plan[i]!));
}

/** Which unit gets which troubles: most none, some one, a few two. */
function troublePlan(units: number, seed: string): readonly (readonly TroubleId[])[] {
  const random = randomOf(seed, "plan");
  const slots = shuffled(
    Array.from({ length: units }, (_, i) => i),
    random,
  );
  const plan: TroubleId[][] = Array.from({ length: units }, () => []);
  const wanted = PLANTED.flatMap(([id, count]) => Array.from({ length: count }, () => id));
  for (const [i, id] of wanted.entries()) plan[slots[i % Math.round(units * 0.7)]!]!.push(id);
  return plan;
}

function unitTruth(seed: string, key: string, kitchen: number, ids: readonly TroubleId[]): UnitTruth {
  const random = randomOf(seed, key);
  const main = MAINS[KITCHENS[kitchen]![1]];
  const begins = workday(dayAfter("2023-11-20", random.whole(0, 240)));
  const minimumPsi = random.pick([15, 20, 20, 22, 25]);
  const build = buildOf(ids.length, randomOf(seed, key, "build"));
  return asBuilt({
    key,
    kitchen,
    build,
    plate: random.pick(["small", "middle", "middle", "large"] as const),
    tankL: random.pick([30, 53, 53, 76]),
    begins,
    commissioned: random.chance(0.75),
    water: Math.exp(0.06 * random.normal()),
    salt: Math.exp(0.15 * random.normal()),
    restrictor: Math.exp(0.05 * random.normal()),
    filterDropKPa: 10 * Math.exp(0.25 * random.normal()),
    shutOffRatio: 0.64 + 0.01 * random.normal(),
    chargePsi: minimumPsi - 2 + 0.5 * random.normal(),
    pressurePsi: main.pressurePsi + 2.5 * random.normal(),
    waterLost: Math.max(0.005, 0.03 + 0.015 * random.normal()),
    saltGained: Math.max(0.01, 0.05 + 0.025 * random.normal()),
    chargeLostPsi: Math.max(0, 1 + 0.6 * random.normal()),
    filterLifeM3: random.between(55, 120),
    permeateLPerDay: random.between(14, 40),
    minimumPsi,
    portsAbsent: portsAbsent(ids, random),
    remineraliser: ids.length === 0 && random.chance(0.08),
    troubles: ids.map((id) => trouble(id, begins, random)),
  });
}

/** A vented tank has no air to charge and no gauge. */
const asBuilt = (unit: UnitTruth): UnitTruth =>
  unit.build === "vented"
    ? {
        ...unit,
        chargePsi: 0,
        chargeLostPsi: 0,
        portsAbsent: [...unit.portsAbsent.filter((one) => one !== "tank"), "tank"],
      }
    : unit;

/** A port that is not there is the rule, not the exception; where a trouble is planted, it is to be found by somebody. */
const portsAbsent = (ids: readonly TroubleId[], random: Random): string[] => {
  const may = (port: string, share: number) => (random.chance(share) && ids.length === 0 ? [port] : []);
  return [...may("afterFilter", 0.3), ...may("tank", 0.15), ...may("meter", 0.2)];
};

function trouble(id: TroubleId, begins: string, random: Random): Trouble {
  const [, , low, high] = PLANTED.find((one) => one[0] === id)!;
  const room = daysBetween(begins, LAST_DAY) - 120;
  const onset = dayAfter(begins, random.whole(60, Math.min(room, 900)));
  return { id, size: sizeOf(low, high, random), onset };
}
