import { COLOURS, type Theme } from "./colours.ts";
import { escapeText } from "./escape-text.ts";

export interface LifeStripPoint {
  /** 0 = new, 1 = today. */
  readonly place: number;
  /** Against new: 1 = as new. */
  readonly flowRatio?: number;
  readonly saltRatio?: number;
  readonly filters?: boolean;
  readonly bypass?: boolean;
  /** Judged in the visit that is open: drawn hollow with its whisker (±U). */
  readonly today?: boolean;
  readonly flowU?: number;
  readonly saltU?: number;
}

export interface LifeStripRequest {
  readonly points: readonly LifeStripPoint[];
  readonly theme: Theme;
  readonly title: string;
  readonly description: string;
  readonly words: {
    readonly salt: string;
    readonly flow: string;
    readonly fresh: string;
    readonly today: string;
  };
}

const WIDTH = 300;
const BASE_Y = 62;
/** Beyond this a wedge points off the strip instead of a mark standing at a wrong height. */
const CLIP = 0.4;
const HALF_HEIGHT = 52;
const PER_RATIO = HALF_HEIGHT / CLIP;
const X = (place: number) => 10 + place * 270;

/** One strip along the element's life: salt passage above, permeate flow below one baseline that means "as new". */
export function lifeStrip(request: LifeStripRequest): string {
  const { ink, ink2, ground } = COLOURS[request.theme];
  const { points, words } = request;
  const marks = points.map((point) => markOf(point, ink, ground)).join("");
  const text = (x: number, y: number, label: string, colour: string, anchor = "start") =>
    `<text x="${x}" y="${y}" font-family="B612, system-ui, sans-serif" font-size="16" fill="${colour}" text-anchor="${anchor}">${escapeText(label)}</text>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} 148" role="img" aria-label="${escapeText(`${request.title}. ${request.description}`)}"><path d="M10 ${BASE_Y}H280" stroke="${ink}" stroke-width="2" stroke-dasharray="2 4"/>${curve(points, "saltRatio", ink)}${curve(points, "flowRatio", ink)}${marks}${text(16, 36, words.salt, ink)}${text(16, 100, words.flow, ink)}${text(4, 144, words.fresh, ink2)}${text(296, 144, words.today, ink2, "end")}</svg>`;
}

const height = (ratio: number) => BASE_Y - PER_RATIO * Math.max(-CLIP, Math.min(CLIP, ratio - 1));

function curve(points: readonly LifeStripPoint[], which: "saltRatio" | "flowRatio", ink: string): string {
  const known = points.filter((point) => point[which] !== undefined);
  return known
    .slice(1)
    .map((point, i) => {
      const before = known[i]!;
      const dash = point.today ? ' stroke-dasharray="4 5"' : "";
      return `<path d="M${X(before.place)} ${height(before[which]!)}L${X(point.place)} ${height(point[which]!)}" stroke="${ink}" stroke-width="3.5"${dash}/>`;
    })
    .join("");
}

function markOf(point: LifeStripPoint, ink: string, ground: string): string {
  const x = X(point.place);
  const parts: string[] = [];
  if (point.bypass)
    parts.push(
      `<path d="M${x - 7} 112L${x + 7} 98M${x - 7} 100L${x + 7} 86M${x - 7} 40L${x + 7} 26M${x - 7} 28L${x + 7} 14" stroke="${ink}" stroke-width="1.5"/>`,
    );
  if (point.filters)
    parts.push(`<path d="M${x} 16V118M${x - 8} 118H${x + 8}" stroke="${ink}" stroke-width="2.5"/>`);
  if (point.saltRatio !== undefined)
    parts.push(
      wedge(x, point.saltRatio, point, ink, ground) ||
        diamond(x, height(point.saltRatio), point, ink, ground),
    );
  if (point.flowRatio !== undefined)
    parts.push(
      wedge(x, point.flowRatio, point, ink, ground) || disc(x, height(point.flowRatio), point, ink, ground),
    );
  return parts.join("");
}

/** Points up or down off the strip; empty when the ratio lies on it. */
function wedge(x: number, ratio: number, point: LifeStripPoint, ink: string, ground: string): string {
  if (Math.abs(ratio - 1) <= CLIP) return "";
  const y = height(ratio);
  const way = ratio > 1 ? -1 : 1;
  return `<path d="M${x - 9} ${y - 6 * way}H${x + 9}L${x} ${y + 8 * way}Z" fill="${point.today ? ground : ink}" stroke="${ink}" stroke-width="2.5"/>`;
}

function whisker(x: number, y: number, u: number | undefined, ink: string): string {
  if (!u) return "";
  const half = Math.min(HALF_HEIGHT, PER_RATIO * u);
  return `<path d="M${x} ${y - half}V${y + half}M${x - 7} ${y - half}H${x + 7}M${x - 7} ${y + half}H${x + 7}" stroke="${ink}" stroke-width="2.5"/>`;
}

function disc(x: number, y: number, point: LifeStripPoint, ink: string, ground: string): string {
  return `${point.today ? whisker(x, y, point.flowU, ink) : ""}<circle cx="${x}" cy="${y}" r="6" fill="${point.today ? ground : ink}" stroke="${ink}" stroke-width="2.5"/>`;
}

function diamond(x: number, y: number, point: LifeStripPoint, ink: string, ground: string): string {
  return `${point.today ? whisker(x, y, point.saltU, ink) : ""}<path d="M${x} ${y - 8}L${x + 8} ${y}L${x} ${y + 8}L${x - 8} ${y}Z" fill="${point.today ? ground : ink}" stroke="${ink}" stroke-width="2.5"/>`;
}
