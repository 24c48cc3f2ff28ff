/** Positive half of the 8-point Gauss–Legendre rule on [−1, 1]. Source: Abramowitz & Stegun, table 25.4. */
const half = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
] as const;

type Nodes = readonly (readonly [position: number, weight: number])[];

/** Nodes on [0, 1] in rising order with weights that sum to 1. */
export const gaussNodes: Nodes = [
  ...half.map(([x, w]) => [(1 - x) / 2, w / 2] as const).reverse(),
  ...half.map(([x, w]) => [(1 + x) / 2, w / 2] as const),
];

/** The 3-point rule of the same table on [0, 1], for how much a mean moves rather than the mean itself. */
export const fewGaussNodes: Nodes = [
  [(1 - Math.sqrt(0.6)) / 2, 5 / 18],
  [1 / 2, 8 / 18],
  [(1 + Math.sqrt(0.6)) / 2, 5 / 18],
];
