import { COLOURS, type Theme } from "./colours.ts";
import { escapeText } from "./escape-text.ts";

export interface CurvePoint {
  readonly x: number;
  readonly y: number;
}

export interface CurvePair {
  readonly label: string;
  readonly now: readonly CurvePoint[];
  readonly changed: readonly CurvePoint[];
  /** Said at the end of the changed curve, with its unit. */
  readonly ends: string;
}

export interface NowAndChangedRequest {
  readonly theme: Theme;
  readonly title: string;
  readonly description: string;
  /** One panel above the other, sharing the axis below. */
  readonly panels: readonly CurvePair[];
  readonly axis: { readonly from: string; readonly to: string; readonly end: number };
}

const WIDTH = 358;
const LEFT = 4;
const RIGHT = 354;
const PANEL = 84;
const HEAD = 22;

/** Curves as they are (thin, dashed) and as changed (heavy), one panel a quantity, from nought. */
export function nowAndChanged(request: NowAndChangedRequest): string {
  const { theme, panels, axis } = request;
  const { ink, ink2 } = COLOURS[theme];
  const height = panels.length * PANEL + 24;
  const bodies = panels.map((pair, i) => panel(pair, i * PANEL, axis.end, ink, ink2)).join("");
  const y = height - 5;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label="${escapeText(`${request.title}. ${request.description}`)}">${bodies}${text(LEFT, y, axis.from, ink2)}${text(RIGHT, y, axis.to, ink2, "end")}</svg>`;
}

const finite = (value: number) => (Number.isFinite(value) ? value : 0);
const round = (value: number) => Math.round(100 * value) / 100;

function panel(pair: CurvePair, top: number, endX: number, ink: string, ink2: string): string {
  const all = [...pair.now, ...pair.changed];
  const most = Math.max(1e-9, ...all.map((one) => finite(one.y)));
  const span = Math.max(1e-9, finite(endX));
  const base = top + PANEL - 4;
  const place = ({ x, y }: CurvePoint) => {
    const across = LEFT + (RIGHT - LEFT) * Math.min(1, Math.max(0, finite(x) / span));
    const up = ((PANEL - 4 - HEAD) * Math.max(0, finite(y))) / most;
    return `${round(across)} ${round(base - up)}`;
  };
  const line = (points: readonly CurvePoint[]) =>
    points.length > 1 ? `M${points.map(place).join("L")}` : "";
  return `<path d="M${LEFT} ${base}H${RIGHT}" stroke="${ink}" stroke-width="1.5"/><path d="${line(pair.now)}" fill="none" stroke="${ink2}" stroke-width="2" stroke-dasharray="5 4"/><path d="${line(pair.changed)}" fill="none" stroke="${ink}" stroke-width="3.5" stroke-linejoin="round"/>${text(LEFT, top + 16, pair.label, ink)}${text(RIGHT, top + 16, pair.ends, ink, "end")}`;
}

const text = (x: number, y: number, label: string, colour: string, anchor = "start") =>
  `<text x="${x}" y="${y}" font-family="B612, system-ui, sans-serif" font-size="16" fill="${colour}" text-anchor="${anchor}">${escapeText(label)}</text>`;
