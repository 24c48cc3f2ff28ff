import { COLOURS, type Theme } from "./colours.ts";

export type FindingMarkRequest = {
  readonly theme: Theme;
  readonly heightPx: number;
} & (
  | { readonly kind: "distance"; readonly d: number }
  | { readonly kind: "cannotTell" }
  | { readonly kind: "none" }
);

const WIDTH = 156;
const LINE_X = 78;
const FAR = 4;

/**
 * The mark of one finding, in a box 156 wide whose middle is the upright limit line (the screen draws it through all bands). `d` is the signed
 * distance beyond the limit in units of U: left is within, right outside; beyond 4 U a wedge points away.
 */
export function findingMark(request: FindingMarkRequest): string {
  const { ink, ground } = COLOURS[request.theme];
  const middle = request.heightPx / 2;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${request.heightPx}" aria-hidden="true">${mark(request, middle, ink, ground)}</svg>`;
}

function mark(request: FindingMarkRequest, y: number, ink: string, ground: string): string {
  if (request.kind === "none") return "";
  if (request.kind === "cannotTell") return hatchedBar(y, ink, ground);
  if (Math.abs(request.d) > FAR)
    return wedge(LINE_X + Math.sign(request.d) * 56, y, Math.sign(request.d), ink);
  return discWithWhisker(LINE_X + 14 * request.d, y, ink, ground);
}

function discWithWhisker(x: number, y: number, ink: string, ground: string): string {
  const whisker = `M${x - 14} ${y}H${x + 14}M${x - 14} ${y - 8}V${y + 8}M${x + 14} ${y - 8}V${y + 8}`;
  return `<path d="${whisker}" stroke="${ground}" stroke-width="7"/><path d="${whisker}" stroke="${ink}" stroke-width="2.5"/><circle cx="${x}" cy="${y}" r="9" fill="${ink}" stroke="${ground}" stroke-width="2.5"/>`;
}

const wedge = (x: number, y: number, way: number, ink: string) =>
  `<path d="M${x - 11 * way} ${y - 11}L${x + 11 * way} ${y}L${x - 11 * way} ${y + 11}Z" fill="${ink}"/>`;

function hatchedBar(y: number, ink: string, ground: string): string {
  const strokes = Array.from(
    { length: 12 },
    (_, i) => `M${LINE_X - 54 + i * 9} ${y + 8}L${LINE_X - 44 + i * 9} ${y - 8}`,
  ).join("");
  return `<rect x="${LINE_X - 56}" y="${y - 9}" width="112" height="18" fill="${ground}" stroke="${ink}" stroke-width="2.5"/><path d="${strokes}" stroke="${ink}" stroke-width="1.5"/>`;
}
