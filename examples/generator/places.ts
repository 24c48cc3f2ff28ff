import type { Random } from "./random.ts";

/** A street's water as the town main brings it: neighbours share it, its seasons and its steps. */
export interface Main {
  readonly name: string;
  readonly feedMgPerL: number;
  readonly hardnessGpg: number;
  readonly chlorineMgPerL: number;
  readonly meanC: number;
  readonly swingC: number;
  readonly pressurePsi: number;
  readonly altitudeM: number;
  /** The utility changed its source on a day: from then on the water is this many times as salty, with other chlorine. */
  readonly step?: { readonly day: string; readonly factor: number; readonly chlorineMgPerL: number };
}

export const MAINS = {
  town: {
    name: "Larkmoor town water",
    feedMgPerL: 265,
    hardnessGpg: 11,
    chlorineMgPerL: 0.8,
    meanC: 13.5,
    swingC: 4.5,
    pressurePsi: 64,
    altitudeM: 90,
  },
  river: {
    name: "Larkmoor river works",
    feedMgPerL: 230,
    hardnessGpg: 9,
    chlorineMgPerL: 0.7,
    meanC: 13,
    swingC: 7,
    pressurePsi: 68,
    altitudeM: 60,
    step: { day: "2025-08-18", factor: 1.52, chlorineMgPerL: 1.5 },
  },
  chalk: {
    name: "Chalk wells",
    feedMgPerL: 395,
    hardnessGpg: 18,
    chlorineMgPerL: 0.5,
    meanC: 12,
    swingC: 2,
    pressurePsi: 61,
    altitudeM: 140,
  },
  moor: {
    name: "Moor reservoir",
    feedMgPerL: 165,
    hardnessGpg: 5,
    chlorineMgPerL: 0.9,
    meanC: 11,
    swingC: 6,
    pressurePsi: 72,
    altitudeM: 320,
  },
} as const satisfies Record<string, Main>;

export type MainId = keyof typeof MAINS;

/** 30 kitchens beside the ten that are written by hand: name, main, number of units. */
export const KITCHENS: readonly (readonly [name: string, main: MainId, units: number])[] = [
  ["Alder Row primary", "town", 1],
  ["Bramley Cross infants", "river", 1],
  ["Carr Bank nursery", "town", 1],
  ["Dovecote juniors", "river", 2],
  ["Eddis Hill secondary", "chalk", 3],
  ["Foxholt primary", "moor", 1],
  ["Gorse End college", "town", 3],
  ["Hollin Wood primary", "moor", 1],
  ["Inkle Street infants", "town", 1],
  ["Juniper House nursery", "chalk", 1],
  ["Kettle Beck primary", "river", 2],
  ["Linnet Way juniors", "town", 1],
  ["Mossgate academy", "moor", 3],
  ["Netherby Road secondary", "river", 3],
  ["Orchard Rise primary", "chalk", 2],
  ["Pinfold Lane school", "town", 1],
  ["Quarry View primary", "chalk", 1],
  ["Rushmere college", "river", 3],
  ["Salt Yard kitchen", "town", 2],
  ["Thistle Down infants", "chalk", 1],
  ["Upper Mead primary", "moor", 1],
  ["Vetch Field school", "town", 2],
  ["Withy Brook nursery", "river", 1],
  ["Yarrow Court day centre", "town", 2],
  ["Ash Beck meals kitchen", "chalk", 3],
  ["Barn Close primary", "moor", 1],
  ["Copper Lane academy", "town", 2],
  ["Drover Road school", "river", 1],
  ["Elm Hatch infants", "chalk", 1],
  ["Fallow Ground secondary", "town", 2],
];

const INITIALS = "ABCDEFGHJKLMNPRSTW";
const SURNAMES =
  "Reeve Marlow Finch Tully Hobday Crane Osgood Pell Lister Wray Keld Summers Vane Arkle Bodin Nashe Quill Roper Stead Unwin".split(
    " ",
  );
const ROLES = ["kitchen lead", "cook", "catering manager", "head chef", "caretaker"] as const;

/** Somebody to ask in a kitchen. */
export const personOf = (random: Random): readonly [name: string, role: string] => [
  `${random.pick([...INITIALS])}. ${random.pick(SURNAMES)}`,
  random.pick(ROLES),
];

/** Feed water and its temperature on a day: a cosine year, coldest in early February. */
export function supplyOn(
  main: Main,
  day: string,
): { feedMgPerL: number; temperatureC: number; chlorine: number } {
  const dayOfYear = (Date.parse(day) - Date.parse(`${day.slice(0, 4)}-01-01`)) / 86_400_000;
  const season = Math.cos((2 * Math.PI * (dayOfYear - 35)) / 365.25);
  const stepped = main.step !== undefined && day >= main.step.day;
  return {
    feedMgPerL: main.feedMgPerL * (1 + 0.03 * season) * (stepped ? main.step.factor : 1),
    temperatureC: main.meanC - main.swingC * season,
    chlorine: stepped ? main.step.chlorineMgPerL : main.chlorineMgPerL,
  };
}

/** What a site's record says of its main. */
export const mainsName = (id: MainId) => ({ waterSource: MAINS[id].name, altitudeM: MAINS[id].altitudeM });
