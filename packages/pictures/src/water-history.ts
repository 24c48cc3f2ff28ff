import { COLOURS, type Theme } from "./colours.ts";
import { escapeText } from "./escape-text.ts";

export interface WaterHistoryPoint {
  /** Milliseconds; only the distances count. */
  readonly at: number;
  readonly value: number;
  readonly u: number;
  /** A new level begins here. */
  readonly step?: boolean;
}

export interface WaterHistoryRequest {
  readonly theme: Theme;
  /** Rising in time. */
  readonly points: readonly WaterHistoryPoint[];
  readonly description: string;
  readonly words: {
    readonly first: string;
    readonly last: string;
    /** A value with its unit, as it may be shown. */
    readonly value: (value: number) => string;
  };
}

const WIDTH = 358;
const HEIGHT = 208;
const LEFT = 18;
const RIGHT = 340;
const TOP = 62;
const BOTTOM = 172;

/**
 * A reading over time: discs with whiskers (±u), a bar at the mean of each level, a wedge and a broken line where a new
 * level begins. The newest level is written out.
 */
export function waterHistory(request: WaterHistoryRequest): string {
  const { ink, ink2 } = COLOURS[request.theme];
  const points = request.points.filter(
    ({ at, value, u }) => [at, value, u].every(Number.isFinite) && value >= 0 && u >= 0,
  );
  const { x, y } = scales(points);
  const levels = levelsOf(points);
  const marks = levels
    .map((level, i) => levelMark(level, levels[i - 1], { x, y, ink }))
    .concat(points.map((point) => disc(x(point.at), y, point, ink)))
    .join("");
  const text = (tx: number, ty: number, label: string, anchor: string, colour = ink2) =>
    `<text x="${tx}" y="${ty}" font-family="B612, system-ui, sans-serif" font-size="16" fill="${colour}" text-anchor="${anchor}">${escapeText(label)}</text>`;
  const [before, newest] = [levels.at(-2), levels.at(-1)];
  const said = [
    before && text(underLabel(before, x), 18, request.words.value(meanOf(before)), "middle", ink),
    newest && text(RIGHT + 6, 18, request.words.value(meanOf(newest)), "end", ink),
  ].filter((one) => one !== undefined);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeText(request.description)}" fill="none"><path d="M${LEFT - 6} ${BOTTOM + 10}H${RIGHT + 6}" stroke="${ink}" stroke-width="2"/>${marks}${said.join("")}${text(LEFT - 6, HEIGHT - 6, request.words.first, "start")}${text(RIGHT + 6, HEIGHT - 6, request.words.last, "end")}</svg>`;
}

/** Over the middle of its level, clear of the newest's. */
const underLabel = (level: readonly WaterHistoryPoint[], x: Scales["x"]) =>
  Math.min(Math.max((x(level[0]!.at) + x(level.at(-1)!.at)) / 2, LEFT + 48), 176);

interface Scales {
  readonly x: (at: number) => number;
  readonly y: (value: number) => number;
}

/** Time from edge to edge; values over at least a fifth of the largest, so that a quiet water looks quiet. */
function scales(points: readonly WaterHistoryPoint[]): Scales {
  const [from, to] = [points[0]?.at ?? 0, points.at(-1)?.at ?? 1];
  const high = Math.max(0, ...points.map(({ value, u }) => value + u));
  const lowest = Math.min(high, ...points.map(({ value, u }) => value - u));
  const low = Math.min(lowest, 0.8 * high);
  const share = (value: number, a: number, b: number) =>
    b > a ? Math.min(Math.max((value - a) / (b - a), 0), 1) : 0.5;
  return {
    x: (at) => LEFT + share(at, from, to) * (RIGHT - LEFT),
    y: (value) => BOTTOM - share(value, low, high) * (BOTTOM - TOP),
  };
}

const levelsOf = (points: readonly WaterHistoryPoint[]) =>
  points.reduce<WaterHistoryPoint[][]>((levels, point) => {
    if (point.step || levels.length === 0) levels.push([]);
    levels.at(-1)!.push(point);
    return levels;
  }, []);

const meanOf = (level: readonly WaterHistoryPoint[]) =>
  level.reduce((sum, { value }) => sum + value, 0) / level.length;

function levelMark(
  level: readonly WaterHistoryPoint[],
  before: readonly WaterHistoryPoint[] | undefined,
  { x, y, ink }: Scales & { readonly ink: string },
): string {
  const [from, to, mean] = [x(level[0]!.at), x(level.at(-1)!.at), meanOf(level)];
  const bar = `<path d="M${(from - 10).toFixed(1)} ${y(mean).toFixed(1)}H${(to + 10).toFixed(1)}" stroke="${ink}" stroke-width="4"/>`;
  if (!before) return bar;
  const middle = (x(before.at(-1)!.at) + from) / 2;
  const way = mean > meanOf(before) ? 1 : -1;
  const wedge = `<path d="M${(middle - 9).toFixed(1)} ${38 + 8 * way}H${(middle + 9).toFixed(1)}L${middle.toFixed(1)} ${38 - 8 * way}Z" fill="${ink}"/>`;
  return `${bar}<path d="M${middle.toFixed(1)} ${TOP - 10}V${BOTTOM + 10}" stroke="${ink}" stroke-width="2" stroke-dasharray="2 4"/>${wedge}`;
}

function disc(at: number, y: Scales["y"], { value, u }: WaterHistoryPoint, ink: string): string {
  const [px, high, low] = [at.toFixed(1), y(value + u).toFixed(1), y(value - u).toFixed(1)];
  return `<path d="M${px} ${high}V${low}" stroke="${ink}" stroke-width="2.5"/><circle cx="${px}" cy="${y(value).toFixed(1)}" r="6" fill="${ink}"/>`;
}
