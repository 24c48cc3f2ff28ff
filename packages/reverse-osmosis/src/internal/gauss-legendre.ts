/** Positive half of the 8-point Gauss–Legendre rule on [−1, 1]. Source: Abramowitz & Stegun, table 25.4. */
const half = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
] as const;

/** Nodes on [0, 1] in rising order with weights that sum to 1. */
export const gaussNodes: readonly (readonly [position: number, weight: number])[] = [
  ...half.map(([x, w]) => [(1 - x) / 2, w / 2] as const).reverse(),
  ...half.map(([x, w]) => [(1 + x) / 2, w / 2] as const),
];
