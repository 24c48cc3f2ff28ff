import { COLOURS, type Theme } from "./colours.ts";
import { escapeText } from "./escape-text.ts";

/** Centre lines of the drawn signs in a box of width × 100. Our own drawing. */
const SIGNS: Readonly<Record<string, readonly [width: number, path: string]>> = {
  "0": [56, "M28 0A28 28 0 0 1 56 28V72A28 28 0 0 1 0 72V28A28 28 0 0 1 28 0Z"],
  "1": [56, "M12 21L36 0V100"],
  "2": [56, "M1 27A27.4 27.4 0 0 1 55.6 27C55.6 42 47 52 36 63L1 100H56"],
  "3": [56, "M3 0H53L27 39C46 39 56 52 56 69.5C56 88 44 100 28 100C15 100 5 93 0 81"],
  "4": [56, "M40 100V0L0 70H58"],
  "5": [56, "M51 0H8L4 45C10 39 18 36.5 28 36.5C45 36.5 56 50 56 68C56 87 45 100 27 100C14 100 4 93 0 82"],
  "6": [56, "M43 0L6 51M28 41A28 29.5 0 0 1 28 100A28 29.5 0 0 1 28 41Z"],
  "7": [56, "M0 0H56L19 100"],
  "8": [
    56,
    "M28 0C42 0 51 9 51 23C51 37 42 46 28 46C14 46 5 37 5 23C5 9 14 0 28 0ZM28 46C45 46 56 56 56 73C56 90 45 100 28 100C11 100 0 90 0 73C0 56 11 46 28 46Z",
  ],
  "9": [56, "M13 100L50 49M28 59A28 29.5 0 0 1 28 0A28 29.5 0 0 1 28 59Z"],
  ".": [1, "M.5 100h.01"],
  ",": [8, "M7 98L1 116"],
  ":": [1, "M.5 26h.01M.5 80h.01"],
  "–": [34, "M2 54H32"],
  "−": [38, "M1 54H37"],
  "-": [38, "M1 54H37"],
  "+": [38, "M20 35V73M1 54H39"],
  "±": [40, "M20 22V66M0 44H40M0 90H40"],
  "×": [38, "M3 38L35 74M35 38L3 74"],
  "<": [36, "M36 28L2 54L36 80"],
  "/": [30, "M30 0L0 100"],
  "≥": [36, "M2 14L36 38L2 62M2 88H36"],
};

export interface NumeralRequest {
  readonly text: string;
  readonly heightPx: number;
  /** Solid = somebody read it; hollow = we expect it. */
  readonly style: "solid" | "hollow";
  readonly theme: Theme;
  /** Share of the height that is stroke; the usual weight when not given. */
  readonly weight?: number;
  /** Drawn on this ground and in this ink instead of the theme's. */
  readonly ink?: string;
  readonly ground?: string;
}

export interface DrawnNumeral {
  /** A `<g>`, its box starting at 0, 0. */
  readonly svg: string;
  readonly widthPx: number;
}

/** A number drawn from single strokes. Signs without a drawing are left out, so the text must be made of digits and marks. */
export function numeral(request: NumeralRequest): DrawnNumeral {
  const { text, heightPx: height, style, theme } = request;
  const stroke = height * (request.weight ?? (style === "hollow" ? 0.178 : 0.148));
  const scale = (height - stroke) / 100;
  const gap = 0.085 * height + stroke;
  let x = stroke / 2 - (text.startsWith("1") ? 11 * scale : 0);
  const strokes: string[] = [];
  for (const sign of text) {
    const drawn = SIGNS[sign];
    if (!drawn) continue;
    const widthHere = sign === "." || sign === ":" ? 1.14 * stroke - stroke : drawn[0] * scale;
    strokes.push(
      `<path transform="translate(${round(x)} ${round(stroke / 2)}) scale(${round(scale)})" d="${drawn[1]}"/>`,
    );
    x += widthHere + gap;
  }
  const widthPx = Math.max(0, round(x - gap + stroke / 2));
  return { svg: ink(strokes.join(""), stroke / scale, request, height / scale), widthPx };

  function ink(paths: string, width: number, { ink: own, ground }: NumeralRequest, tall: number): string {
    const colours = COLOURS[theme];
    const group = (colour: string, w: number) =>
      `<g fill="none" stroke="${colour}" stroke-width="${round(w)}" stroke-linecap="round" stroke-linejoin="round">${paths}</g>`;
    const solid = group(own ?? colours.ink, width);
    if (style === "solid") return solid;
    const wall = Math.max(2.2 * (tall / height), 0.034 * tall);
    return solid + group(ground ?? colours.ground, width - 2 * wall);
  }
}

/** A drawn number as a picture of its own, with the name a screen reader says. */
export function numeralSvg(request: NumeralRequest & { readonly label: string }): string {
  const { svg, widthPx } = numeral(request);
  const height = round(request.heightPx * (request.text.includes(",") ? 1.2 : 1));
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${Math.max(1, widthPx)} ${height}" width="${Math.max(1, widthPx)}" height="${height}" overflow="visible" role="img" aria-label="${escapeText(request.label)}">${svg}</svg>`;
}

const round = (x: number) => Math.round(x * 100) / 100;
