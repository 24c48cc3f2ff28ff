import { COLOURS, type Theme } from "./colours.ts";

/** The row of ticks on top of a visit, one per number: solid = have it, hollow = not yet. Box `widthPx` × 16. */
export function visitTicks(have: readonly boolean[], widthPx: number, theme: Theme): string {
  const { ink, ground } = COLOURS[theme];
  const step = widthPx / Math.max(1, have.length);
  const tick = (has: boolean, i: number) =>
    `<rect x="${i * step + 2}" y="2" width="${Math.max(1, step - 4)}" height="12" fill="${has ? ink : ground}" stroke="${ink}" stroke-width="2"/>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${widthPx} 16" aria-hidden="true">${have.map(tick).join("")}</svg>`;
}
