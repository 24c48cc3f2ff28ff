/** The invented Larkmoor school-meals district: each unit, what is true of it, and what a technician read when. */
export interface DemoVisit {
  readonly day: string;
  readonly kind: "commissioning" | "annual" | "callOut";
  readonly temperatureC: number;
  readonly feedPressurePsi: number;
  readonly feedPpm: number;
  /** Drop over the cartridges as it flows, psi. */
  readonly filterDropPsi: number;
  /** Element against new: water permeability and salt permeability. */
  readonly water: number;
  readonly salt: number;
  readonly chlorineAfter?: number;
  readonly meterM3?: number;
  /** Delivered against permeate to waste; normally 1.4 to 1.8, because a tank fills against pressure. */
  readonly delivered?: number;
  /** Air charge the tank really has, psi. */
  readonly airPsi?: number;
  readonly replaced?: readonly string[];
  readonly bypassedUntil?: string;
}

export interface DemoUnit {
  readonly site: string;
  readonly ask: readonly [name: string, role: string];
  readonly appliance: readonly [
    name: string,
    type: string,
    minimumPsi: number | null,
    limitPpm442: number | null,
  ];
  /** Litres on a busy day, from, until. */
  readonly busyDay?: readonly [litres: number, from: string, until: string];
  readonly plate: "small" | "middle" | "large";
  readonly altitudeM?: number;
  readonly tankL: number;
  readonly portsAbsent?: readonly string[];
  readonly bypassFitted?: boolean;
  readonly remineraliser?: boolean;
  readonly visits: readonly DemoVisit[];
}

const fresh = { filterDropPsi: 1.5, water: 1, salt: 1 } as const;

export const DISTRICT: readonly DemoUnit[] = [
  {
    site: "Sallow Lane primary",
    ask: ["M. Teal", "kitchen lead"],
    appliance: ["Combi oven", "combiOven", 20, 100],
    busyDay: [40, "06:30", "14:00"],
    plate: "large",
    tankL: 53,
    bypassFitted: true,
    visits: [
      {
        day: "2023-11-21",
        kind: "commissioning",
        temperatureC: 15,
        feedPressurePsi: 62,
        feedPpm: 212,
        ...fresh,
        meterM3: 0,
        airPsi: 10,
      },
      {
        day: "2024-11-19",
        kind: "annual",
        temperatureC: 13,
        feedPressurePsi: 61,
        feedPpm: 218,
        filterDropPsi: 4,
        water: 0.97,
        salt: 1.04,
        meterM3: 44,
        airPsi: 8,
        replaced: ["sediment", "carbon"],
      },
      {
        day: "2025-11-20",
        kind: "annual",
        temperatureC: 12,
        feedPressurePsi: 60,
        feedPpm: 214,
        filterDropPsi: 7,
        water: 0.95,
        salt: 1.1,
        meterM3: 91,
        airPsi: 5,
      },
    ],
  },
  {
    site: "Heron Mere secondary",
    ask: ["D. Okafor", "head chef"],
    appliance: ["Steamer", "steamer", 25, 60],
    plate: "large",
    tankL: 76,
    bypassFitted: true,
    visits: [
      {
        day: "2024-08-27",
        kind: "commissioning",
        temperatureC: 18,
        feedPressurePsi: 68,
        feedPpm: 330,
        ...fresh,
        meterM3: 0,
        airPsi: 22,
      },
      {
        day: "2025-09-02",
        kind: "annual",
        temperatureC: 18,
        feedPressurePsi: 66,
        feedPpm: 326,
        filterDropPsi: 2.5,
        water: 0.98,
        salt: 1.05,
        meterM3: 52,
        airPsi: 21,
        replaced: ["sediment", "carbon"],
      },
      {
        day: "2026-10-06",
        kind: "callOut",
        temperatureC: 16,
        feedPressurePsi: 66,
        feedPpm: 335,
        filterDropPsi: 3,
        water: 1.3,
        salt: 3.9,
        chlorineAfter: 0.8,
        meterM3: 171,
        airPsi: 20,
      },
    ],
  },
  {
    site: "Fennings infants",
    ask: ["R. Quill", "cook"],
    appliance: ["Ice maker", "ice", 20, 150],
    plate: "small",
    tankL: 30,
    visits: [
      {
        day: "2025-01-14",
        kind: "commissioning",
        temperatureC: 9,
        feedPressurePsi: 58,
        feedPpm: 265,
        ...fresh,
        meterM3: 0,
        airPsi: 9,
      },
      {
        day: "2026-01-20",
        kind: "annual",
        temperatureC: 8,
        feedPressurePsi: 58,
        feedPpm: 262,
        filterDropPsi: 2,
        water: 0.97,
        salt: 1.05,
        meterM3: 38,
        airPsi: 9,
        delivered: 2.3,
        replaced: ["sediment", "carbon"],
      },
    ],
  },
  {
    site: "Larkmoor central kitchen",
    ask: ["A. Brandt", "production manager"],
    appliance: ["Combi oven, left", "combiOven", 22, 80],
    plate: "large",
    tankL: 76,
    bypassFitted: true,
    visits: [
      {
        day: "2024-03-05",
        kind: "commissioning",
        temperatureC: 11,
        feedPressurePsi: 72,
        feedPpm: 410,
        ...fresh,
        meterM3: 0,
        airPsi: 20,
      },
      {
        day: "2025-03-11",
        kind: "annual",
        temperatureC: 11,
        feedPressurePsi: 71,
        feedPpm: 405,
        filterDropPsi: 3,
        water: 0.96,
        salt: 1.08,
        meterM3: 61,
        airPsi: 20,
        replaced: ["sediment", "carbon"],
      },
      {
        day: "2026-03-10",
        kind: "annual",
        temperatureC: 10,
        feedPressurePsi: 72,
        feedPpm: 415,
        filterDropPsi: 3,
        water: 0.72,
        salt: 1.5,
        meterM3: 120,
        airPsi: 19,
        replaced: ["sediment", "carbon"],
        bypassedUntil: "2026-12-15",
      },
    ],
  },
  {
    site: "Wickham Ford academy",
    ask: ["S. Lind", "catering manager"],
    appliance: ["Coffee machine", "coffee", 15, 150],
    plate: "middle",
    tankL: 15,
    remineraliser: true,
    visits: [
      {
        day: "2025-05-06",
        kind: "commissioning",
        temperatureC: 16,
        feedPressurePsi: 55,
        feedPpm: 280,
        ...fresh,
        meterM3: 0,
        airPsi: 8,
        delivered: 6,
      },
      {
        day: "2026-05-12",
        kind: "annual",
        temperatureC: 16,
        feedPressurePsi: 54,
        feedPpm: 284,
        filterDropPsi: 2,
        water: 0.98,
        salt: 1.04,
        meterM3: 29,
        airPsi: 8,
        delivered: 5.5,
        replaced: ["sediment", "carbon"],
      },
    ],
  },
  {
    site: "High Fold village school",
    ask: ["P. Ashe", "school secretary"],
    appliance: ["Water dispenser", "dispenser", null, null],
    plate: "small",
    altitudeM: 610,
    tankL: 15,
    visits: [
      {
        day: "2026-02-17",
        kind: "annual",
        temperatureC: 7,
        feedPressurePsi: 64,
        feedPpm: 68,
        filterDropPsi: 2,
        water: 1,
        salt: 1,
        meterM3: 12,
        airPsi: 9,
      },
    ],
  },
  {
    site: "Dunmore special school",
    ask: ["T. Vale", "kitchen lead"],
    appliance: ["Combi oven", "combiOven", 20, 100],
    plate: "middle",
    tankL: 53,
    visits: [
      {
        day: "2025-06-03",
        kind: "commissioning",
        temperatureC: 17,
        feedPressurePsi: 63,
        feedPpm: 240,
        ...fresh,
        meterM3: 0,
        airPsi: 18,
      },
      {
        day: "2026-06-09",
        kind: "annual",
        temperatureC: 17,
        feedPressurePsi: 62,
        feedPpm: 243,
        filterDropPsi: 1.8,
        water: 0.99,
        salt: 1.02,
        meterM3: 33,
        airPsi: 18,
        replaced: ["sediment", "carbon"],
      },
    ],
  },
  {
    site: "Ivel Bridge nursery",
    ask: ["K. Moss", "cook"],
    appliance: ["Steamer", "steamer", 20, null],
    plate: "small",
    tankL: 15,
    portsAbsent: ["beforeFilter", "afterFilter", "tank", "meter"],
    visits: [
      {
        day: "2024-09-17",
        kind: "commissioning",
        temperatureC: 16,
        feedPressurePsi: 60,
        feedPpm: 300,
        ...fresh,
      },
      {
        day: "2025-09-23",
        kind: "annual",
        temperatureC: 15,
        feedPressurePsi: 60,
        feedPpm: 305,
        filterDropPsi: 2,
        water: 0.95,
        salt: 1.1,
        replaced: ["sediment", "carbon"],
      },
    ],
  },
  {
    site: "Tarn Hill primary",
    ask: ["L. Frey", "kitchen lead"],
    appliance: ["Combi oven", "combiOven", 20, 100],
    plate: "middle",
    tankL: 53,
    visits: [
      {
        day: "2024-04-16",
        kind: "commissioning",
        temperatureC: 12,
        feedPressurePsi: 65,
        feedPpm: 190,
        ...fresh,
        meterM3: 0,
        airPsi: 18,
      },
      {
        day: "2025-04-22",
        kind: "annual",
        temperatureC: 12,
        feedPressurePsi: 64,
        feedPpm: 188,
        filterDropPsi: 2,
        water: 0.9,
        salt: 1.05,
        meterM3: 40,
        airPsi: 18,
        replaced: ["sediment", "carbon"],
      },
      {
        day: "2026-04-21",
        kind: "annual",
        temperatureC: 11,
        feedPressurePsi: 64,
        feedPpm: 192,
        filterDropPsi: 2,
        water: 0.74,
        salt: 1.12,
        meterM3: 82,
        airPsi: 17,
        replaced: ["sediment", "carbon"],
      },
    ],
  },
  {
    site: "Osier Green primary",
    ask: ["B. Nilsen", "cook"],
    appliance: ["Dishwasher rinse", "dishwasher", 25, 120],
    plate: "large",
    tankL: 53,
    visits: [
      {
        day: "2025-10-14",
        kind: "commissioning",
        temperatureC: 14,
        feedPressurePsi: 70,
        feedPpm: 350,
        ...fresh,
        meterM3: 0,
        airPsi: 23,
      },
      {
        day: "2026-10-20",
        kind: "annual",
        temperatureC: 14,
        feedPressurePsi: 69,
        feedPpm: 352,
        filterDropPsi: 2.4,
        water: 0.98,
        salt: 1.03,
        meterM3: 49,
        airPsi: 22,
        replaced: ["sediment", "carbon"],
      },
    ],
  },
];
