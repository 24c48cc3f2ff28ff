import { COLOURS, type Theme } from "./colours.ts";
import { escapeText } from "./escape-text.ts";

export interface BlendBarLimit {
  readonly name: string;
  /** Fractions of feed at which it is kept; absent when at none. */
  readonly kept?: readonly [low: number, high: number];
}

export interface BlendBarRequest {
  readonly theme: Theme;
  readonly limits: readonly BlendBarLimit[];
  /** Where every limit is kept; absent when nowhere. */
  readonly all?: readonly [low: number, high: number];
  /** Fraction of feed chosen now. */
  readonly chosen: number;
  readonly description: string;
}

const WIDTH = 358;
const LEFT = 14;
const SPAN = 330;
const ROW = 40;

const x = (fraction: number) => LEFT + Math.min(Math.max(fraction, 0), 1) * SPAN;

/** Each limit as a bar over the blends that keep it, all of them together below, and the blend chosen as an upright line. */
export function blendBar(request: BlendBarRequest): string {
  const { ink, ink2, tint } = COLOURS[request.theme];
  const height = (request.limits.length + 1) * ROW;
  const text = (ty: number, label: string, colour: string) =>
    `<text x="${LEFT + 8}" y="${ty}" font-family="B612, system-ui, sans-serif" font-size="16" fill="${colour}">${escapeText(label)}</text>`;
  const bar = (top: number, kept: readonly [number, number] | undefined, strong: boolean) =>
    `<rect x="${LEFT}" y="${top}" width="${SPAN}" height="10" fill="${tint}" stroke="${ink}" stroke-width="1.5"/>${
      kept
        ? `<rect x="${x(kept[0]).toFixed(1)}" y="${top}" width="${Math.max(2, x(kept[1]) - x(kept[0])).toFixed(1)}" height="10" fill="${strong ? ink : ink2}"/>`
        : ""
    }`;
  const rows = request.limits
    .map((limit, i) => text(i * ROW + 17, limit.name, ink) + bar(i * ROW + 24, limit.kept, false))
    .join("");
  const last = request.limits.length * ROW;
  const chosen = x(request.chosen).toFixed(1);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label="${escapeText(request.description)}">${rows}${bar(last + 16, request.all, true)}<path d="M${chosen} 20V${height}" stroke="${ink}" stroke-width="3"/></svg>`;
}
