import { COLOURS, type Theme, waterColour } from "./colours.ts";
import { escapeText } from "./escape-text.ts";

export interface TankDrawn {
  readonly label: string;
  readonly volumeL: number;
  /** Water in it when full. */
  readonly storedL: number;
  /** Of that, what comes out above the appliance's minimum. */
  readonly usableL: number;
  readonly mgPerL: number;
  readonly said: string;
}

export interface TankPairRequest {
  readonly theme: Theme;
  readonly title: string;
  readonly description: string;
  readonly tanks: readonly [now: TankDrawn, changed: TankDrawn];
}

const HEIGHT = 150;
const TALL = 112;
const WIDE = 84;

/** Two tanks side by side, as it is and as changed: water to its level, the usable part above the rule. */
export function tankPair(request: TankPairRequest): string {
  const { theme, tanks } = request;
  const most = Math.max(1e-9, ...tanks.map((tank) => tank.volumeL));
  const drawn = tanks.map((tank, i) => oneTank(tank, 4 + i * 179, most, theme, i === 1)).join("");
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 358 ${HEIGHT}" role="img" aria-label="${escapeText(`${request.title}. ${request.description}`)}">${drawn}</svg>`;
}

const share = (part: number, whole: number) =>
  Number.isFinite(part / whole) ? Math.min(1, Math.max(0, part / whole)) : 0;
const round = (value: number) => Math.round(100 * value) / 100;

function oneTank(tank: TankDrawn, x: number, most: number, theme: Theme, heavy: boolean): string {
  const { ink, ink2 } = COLOURS[theme];
  const tall = TALL * Math.max(0.35, share(tank.volumeL, most));
  const bottom = 26 + TALL;
  const level = tall * share(tank.storedL, tank.volumeL);
  const rest = tall * share(tank.storedL - tank.usableL, tank.volumeL);
  const stroke = heavy ? 5 : 2;
  const dash = heavy ? "" : ' stroke-dasharray="5 4"';
  const water = `<rect x="${x + 3}" y="${round(bottom - level)}" width="${WIDE - 6}" height="${round(level)}" fill="${waterColour(Math.max(0.1, tank.mgPerL), theme)}"/>`;
  const rule = `<path d="M${x + 3} ${round(bottom - level)}H${x + WIDE - 3}" stroke="${ink}" stroke-width="1.5"/><path d="M${x - 2} ${round(bottom - rest)}H${x + WIDE + 8}" stroke="${ink}" stroke-width="3"/>`;
  const walls = `<rect x="${x + 2}" y="${round(bottom - tall)}" width="${WIDE - 4}" height="${round(tall)}" fill="none" stroke="${heavy ? ink : ink2}" stroke-width="${stroke}"${dash}/>`;
  const label = (y: number, text: string, colour: string) =>
    `<text x="${y === 16 ? x : x + WIDE + 10}" y="${y}" font-family="B612, system-ui, sans-serif" font-size="16" fill="${colour}">${escapeText(text)}</text>`;
  const [first = "", second = ""] = tank.said.split("\n");
  return `${label(16, tank.label, ink)}${water}${walls}${rule}${label(72, first, ink)}${label(94, second, ink2)}`;
}
