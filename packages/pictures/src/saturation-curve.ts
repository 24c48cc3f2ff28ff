import { COLOURS, type Theme } from "./colours.ts";
import { escapeText } from "./escape-text.ts";

export interface SaturationPoint {
  readonly temperatureC: number;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface SaturationCurveRequest {
  readonly theme: Theme;
  /** Rising in temperature. `low` and `high` equal to `middle` draw no band. */
  readonly points: readonly SaturationPoint[];
  /** What stands at which temperature. */
  readonly appliances: readonly { readonly name: string; readonly temperatureC: number }[];
  readonly description: string;
  readonly words: { readonly scales: string; readonly dissolves: string };
}

const WIDTH = 358;
const HEIGHT = 252;
const LEFT = 12;
const RIGHT = 346;
const TOP = 62;
const BOTTOM = 206;
const COLD = 10;
const HOT = 100;
/** Beyond this the curve runs along the edge. */
const CLIP = 1.5;

const x = (temperatureC: number) =>
  LEFT + ((Math.min(Math.max(temperatureC, COLD), HOT) - COLD) / (HOT - COLD)) * (RIGHT - LEFT);
const y = (index: number) =>
  (TOP + BOTTOM) / 2 - (Math.min(Math.max(index, -CLIP), CLIP) / CLIP) * ((BOTTOM - TOP) / 2);
const at = (temperatureC: number, index: number) => `${x(temperatureC).toFixed(1)} ${y(index).toFixed(1)}`;

/**
 * Saturation of calcite against temperature: above the line the water lays scale down, below it takes calcite up. The
 * solid curve is the middle, the band what readings leave open; each appliance stands at its own temperature. The words for
 * above and below stand outside the field, where no band runs through them.
 */
export function saturationCurve(request: SaturationCurveRequest): string {
  const { ink, ink2, tint, ground } = COLOURS[request.theme];
  const points = request.points.filter(({ low, middle, high }) => [low, middle, high].every(Number.isFinite));
  const path = (of: (point: SaturationPoint) => number, some = points) =>
    some.map((point) => at(point.temperatureC, of(point))).join("L");
  const wide = points.some(({ low, high }) => high > low);
  const band =
    wide && points.length > 1
      ? `<path d="M${path((p) => p.high)}L${path((p) => p.low, [...points].reverse())}Z" fill="${tint}" stroke="${ink}" stroke-width="1.5" stroke-dasharray="5 4"/>`
      : "";
  const curve =
    points.length > 1 ? `<path d="M${path((p) => p.middle)}" stroke="${ink}" stroke-width="4"/>` : "";
  const text = (tx: number, ty: number, label: string, colour: string, anchor = "start") =>
    `<text x="${tx}" y="${ty}" font-family="B612, system-ui, sans-serif" font-size="16" fill="${colour}" text-anchor="${anchor}">${escapeText(label)}</text>`;
  const marks = placed(request.appliances)
    .map(({ name, temperatureC, row }) => {
      const [px, anchor] = [x(temperatureC), temperatureC > 55 ? "end" : "start"];
      return `<path d="M${px.toFixed(1)} ${20 + row * 20}V${BOTTOM}" stroke="${ink}" stroke-width="2"/>${text(px + (anchor === "end" ? -6 : 6), 18 + row * 20, name, ink, anchor)}${dot(points, temperatureC, ink, ground)}`;
    })
    .join("");
  const ticks = [20, 40, 60, 80, 100]
    .map((t) => text(x(t), HEIGHT - 8, `${t}${t === 100 ? " °C" : ""}`, ink2, t === 100 ? "end" : "middle"))
    .join("");
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeText(request.description)}" fill="none">${band}<path d="M${LEFT} ${y(0)}H${RIGHT}" stroke="${ink}" stroke-width="2" stroke-dasharray="2 4"/>${marks}${curve}${text(LEFT, TOP - 6, request.words.scales, ink2)}${text(LEFT, BOTTOM + 17, request.words.dissolves, ink2)}${ticks}</svg>`;
}

/** The middle of the curve at an appliance, between its points. */
function dot(points: readonly SaturationPoint[], temperatureC: number, ink: string, ground: string): string {
  const after = points.findIndex((point) => point.temperatureC >= temperatureC);
  const [a, b] = [points[after - 1] ?? points[after], points[after]];
  if (!a || !b) return "";
  const share =
    b.temperatureC > a.temperatureC ? (temperatureC - a.temperatureC) / (b.temperatureC - a.temperatureC) : 0;
  const index = a.middle + share * (b.middle - a.middle);
  return `<circle cx="${x(temperatureC).toFixed(1)}" cy="${y(index).toFixed(1)}" r="7" fill="${ground}" stroke="${ink}" stroke-width="2.5"/>`;
}

/** Names that would run into each other stand one row lower; equal temperatures share one mark. */
function placed(appliances: SaturationCurveRequest["appliances"]) {
  const byPlace = new Map<number, string[]>();
  for (const { name, temperatureC } of appliances)
    byPlace.set(temperatureC, [...(byPlace.get(temperatureC) ?? []), name]);
  return [...byPlace]
    .sort(([a], [b]) => b - a)
    .slice(0, 2)
    .map(([temperatureC, names], row) => ({
      temperatureC,
      row,
      name: names.length > 2 ? `${names[0]} +${names.length - 1}` : names.join(", "),
    }));
}
