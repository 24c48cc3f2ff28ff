import { COLOURS, type Theme } from "./colours.ts";

export interface ReadingRailRequest {
  readonly theme: Theme;
  readonly low: number;
  readonly high: number;
  readonly expected?: { readonly from: number; readonly to: number };
  readonly read?: { readonly value: number; readonly u: number };
}

const WIDTH = 302;
const Y = 16;

/** The rail under the number being entered: box = where it should read, disc with whisker (±u) = what was read. */
export function readingRail(request: ReadingRailRequest): string {
  const { ink, ground } = COLOURS[request.theme];
  const span = request.high - request.low;
  const x = (value: number) => {
    const share = span > 0 ? (value - request.low) / span : 0.5;
    return Math.round(1000 * Math.min(1, Math.max(0, share)) * (WIDTH - 20)) / 1000 + 10;
  };
  const { expected, read } = request;
  const box = expected
    ? `<rect x="${x(expected.from)}" y="${Y - 13}" width="${Math.max(4, x(expected.to) - x(expected.from))}" height="26" fill="${ground}" stroke="${ink}" stroke-width="3"/>`
    : "";
  const mark = read ? disc(x(read.value), x(read.value - read.u), x(read.value + read.u), ink) : "";
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} 32" aria-hidden="true"><path d="M0 ${Y}H${WIDTH}" stroke="${ink}" stroke-width="2"/>${box}${mark}</svg>`;
}

const disc = (at: number, from: number, to: number, ink: string) =>
  `<path d="M${from} ${Y}H${to}M${from} ${Y - 10}V${Y + 10}M${to} ${Y - 10}V${Y + 10}" stroke="${ink}" stroke-width="2.5"/><circle cx="${at}" cy="${Y}" r="8" fill="${ink}"/>`;
