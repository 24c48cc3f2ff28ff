import { COLOURS, type Theme } from "./colours.ts";
import { escapeText } from "./escape-text.ts";

/**
 * Centre lines of the drawn signs in a box of width × 100, all steps relative: where one starts, the whole sign stands. Our own
 * drawing.
 */
const SIGNS: Readonly<Record<string, readonly [width: number, path: string]>> = {
  "0": [56, "m28 0a28 28 0 0 1 28 28v44a28 28 0 0 1-56 0v-44a28 28 0 0 1 28-28z"],
  "1": [56, "m12 21l24-21v100"],
  "2": [56, "m1 27a27.4 27.4 0 0 1 54.6 0c0 15-8.6 25-19.6 36l-35 37h55"],
  "3": [56, "m3 0h50l-26 39c19 0 29 13 29 30.5c0 18.5-12 30.5-28 30.5c-13 0-23-7-28-19"],
  "4": [56, "m40 100v-100l-40 70h58"],
  "5": [56, "m51 0h-43l-4 45c6-6 14-8.5 24-8.5c17 0 28 13.5 28 31.5c0 19-11 32-29 32c-13 0-23-7-27-18"],
  "6": [56, "m43 0l-37 51m22-10a28 29.5 0 0 1 0 59a28 29.5 0 0 1 0-59z"],
  "7": [56, "m0 0h56l-37 100"],
  "8": [
    56,
    "m28 0c14 0 23 9 23 23c0 14-9 23-23 23c-14 0-23-9-23-23c0-14 9-23 23-23zm0 46c17 0 28 10 28 27c0 17-11 27-28 27c-17 0-28-10-28-27c0-17 11-27 28-27z",
  ],
  "9": [56, "m13 100l37-51m-22 10a28 29.5 0 0 1 0-59a28 29.5 0 0 1 0 59z"],
  ".": [1, "m.5 100h.01"],
  ",": [8, "m7 98l-6 18"],
  ":": [1, "m.5 26h.01m-.01 54h.01"],
  "–": [34, "m2 54h30"],
  "−": [38, "m1 54h36"],
  "-": [38, "m1 54h36"],
  "+": [38, "m20 35v38m-19-19h38"],
  "±": [40, "m20 22v44m-20-22h40m-40 46h40"],
  "×": [38, "m3 38l32 36m0-36l-32 36"],
  "<": [36, "m36 28l-34 26l34 26"],
  "/": [30, "m30 0l-30 100"],
  "≥": [36, "m2 14l34 24l-34 24m0 26h34"],
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

/**
 * A number drawn from single strokes, all signs one path: a phone lays out and paints few elements. Signs without a drawing are left out,
 * so the text must be made of digits and marks.
 */
export function numeral(request: NumeralRequest): DrawnNumeral {
  const { text, heightPx: height, style, theme } = request;
  const stroke = height * (request.weight ?? (style === "hollow" ? 0.178 : 0.148));
  const scale = (height - stroke) / 100;
  const gap = 0.085 * height + stroke;
  let x = stroke / 2 - (text.startsWith("1") ? 11 * scale : 0);
  let path = "";
  for (const sign of text) {
    const drawn = SIGNS[sign];
    if (!drawn) continue;
    const widthHere = sign === "." || sign === ":" ? 1.14 * stroke - stroke : drawn[0] * scale;
    path += `M${round(x / scale)} 0${drawn[1]}`;
    x += widthHere + gap;
  }
  const place = `translate(0 ${round(stroke / 2)}) scale(${Math.round(scale * 1e4) / 1e4})`;
  const inked = (colour: string, width: number) =>
    `<path transform="${place}" fill="none" stroke="${colour}" stroke-width="${round(width)}" stroke-linecap="round" stroke-linejoin="round" d="${path}"/>`;
  const colours = COLOURS[theme];
  const solid = inked(request.ink ?? colours.ink, stroke / scale);
  const wall = Math.max(2.2, 0.034 * height) / scale;
  const hollow = style === "hollow" ? inked(request.ground ?? colours.ground, stroke / scale - 2 * wall) : "";
  return { svg: solid + hollow, widthPx: Math.max(0, round(x - gap + stroke / 2)) };
}

/** A drawn number as a picture of its own, with the name a screen reader says. */
export function numeralSvg(request: NumeralRequest & { readonly label: string }): string {
  const { svg, widthPx } = numeral(request);
  const height = round(request.heightPx * (request.text.includes(",") ? 1.2 : 1));
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${Math.max(1, widthPx)} ${height}" width="${Math.max(1, widthPx)}" height="${height}" overflow="visible" role="img" aria-label="${escapeText(request.label)}">${svg}</svg>`;
}

const round = (x: number) => Math.round(x * 100) / 100;
