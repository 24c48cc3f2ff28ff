import { COLOURS, type Theme } from "./colours.ts";
import { escapeText } from "./escape-text.ts";

export interface DayAtTankRequest {
  readonly theme: Theme;
  /** Litres in the tank that can be used, by clock hour: on a bad, an ordinary and a good day. */
  readonly usable: readonly { readonly low: number; readonly value: number; readonly high: number }[];
  /** Litres asked for in each clock hour. */
  readonly asked: readonly number[];
  /** Clock hour in which the tank stands lowest. */
  readonly tightestHour: number;
  readonly description: string;
  /** Said above each panel, with its greatest number. */
  readonly words: { readonly usable: string; readonly asked: string };
}

const WIDTH = 358;
const HEIGHT = 264;
const LEFT = 4;
const RIGHT = 354;
const TANK = { top: 26, base: 126 };
const ASKED = { top: 164, base: 232 };
const HOUR = (RIGHT - LEFT) / 24;

const round = (value: number) => Math.round(10 * value) / 10;
const finite = (value: number) => (Number.isFinite(value) ? Math.max(0, value) : 0);

/** A day at the tank: above what can be used of it, hour by hour, with its band; below what the kitchen asks. */
export function dayAtTank(request: DayAtTankRequest): string {
  const { ink, ink2 } = COLOURS[request.theme];
  const ticks = [0, 6, 12, 18, 24]
    .map((hour) => {
      const anchor = hour === 0 ? "start" : hour === 24 ? "end" : "middle";
      return text(LEFT + hour * HOUR, HEIGHT - 8, `${hour}:00`, ink2, anchor);
    })
    .join("");
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeText(request.description)}" fill="none">${tank(request)}${asked(request)}${text(LEFT, TANK.top - 10, request.words.usable, ink)}${text(LEFT, ASKED.top - 10, request.words.asked, ink)}${ticks}</svg>`;
}

function tank({ theme, usable, tightestHour }: DayAtTankRequest): string {
  const { ink, tint, ground } = COLOURS[theme];
  const most = Math.max(1e-9, ...usable.map(({ high }) => finite(high)));
  const y = (litres: number) => round(TANK.base - (finite(litres) / most) * (TANK.base - TANK.top));
  const x = (hour: number) => round(LEFT + (hour + 0.5) * HOUR);
  const path = (of: (band: DayAtTankRequest["usable"][number]) => number, hours = [...usable.keys()]) =>
    hours.map((hour) => `${x(hour)} ${y(of(usable[hour]!))}`).join("L");
  const back = [...usable.keys()].reverse();
  const lowest = y(usable[tightestHour]?.low ?? 0);
  return [
    `<path d="M${path((b) => b.high)}L${path((b) => b.low, back)}Z" fill="${tint}" stroke="${ink}" stroke-width="1.5" stroke-dasharray="5 4"/>`,
    `<path d="M${path((b) => b.value)}" stroke="${ink}" stroke-width="3.5" stroke-linejoin="round"/>`,
    `<path d="M${LEFT} ${TANK.base}H${RIGHT}" stroke="${ink}" stroke-width="5"/>`,
    `<circle cx="${x(tightestHour)}" cy="${lowest}" r="7" fill="${ground}" stroke="${ink}" stroke-width="2.5"/>`,
  ].join("");
}

function asked({ theme, asked: litres }: DayAtTankRequest): string {
  const { ink } = COLOURS[theme];
  const most = Math.max(1e-9, ...litres.map(finite));
  const bars = litres
    .map((one, hour) => {
      const height = (finite(one) / most) * (ASKED.base - ASKED.top);
      if (height < 0.5) return "";
      return `<path d="M${round(LEFT + hour * HOUR + 2)} ${ASKED.base}v${round(-height)}h${round(HOUR - 4)}v${round(height)}" stroke="${ink}" stroke-width="2"/>`;
    })
    .join("");
  return `${bars}<path d="M${LEFT} ${ASKED.base}H${RIGHT}" stroke="${ink}" stroke-width="1.5"/>`;
}

const text = (x: number, y: number, label: string, colour: string, anchor = "start") =>
  `<text x="${round(x)}" y="${y}" font-family="B612, system-ui, sans-serif" font-size="16" fill="${colour}" text-anchor="${anchor}">${escapeText(label)}</text>`;
