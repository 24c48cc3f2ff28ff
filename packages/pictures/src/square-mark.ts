import { COLOURS, type Theme } from "./colours.ts";

/** A square beside a thing to carry: solid = have it, hollow = not yet. Box 20 × 20. */
export function squareMark(have: boolean, theme: Theme): string {
  const { ink, ground } = COLOURS[theme];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 20 20" aria-hidden="true"><rect x="2" y="2" width="16" height="16" fill="${have ? ink : ground}" stroke="${ink}" stroke-width="2.5"/></svg>`;
}
