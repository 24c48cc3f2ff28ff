import { COLOURS, type Theme, waterColour } from "./colours.ts";

export type BandPart =
  | "tap"
  | "cartridge"
  | "shutOff"
  | "element"
  | "tank"
  | "postFilter"
  | "outlet"
  | "plain";

export interface WaterBand {
  readonly part: BandPart;
  readonly y: number;
  readonly height: number;
  /** Something was read here (disc) or is expected here (circle with whisker). */
  readonly mark?: "read" | "expected";
  /** A plain band below the membrane lies on the permeate's side. */
  readonly side?: "permeate";
}

export interface LineOfWaterRequest {
  readonly bands: readonly WaterBand[];
  readonly theme: Theme;
  readonly width: number;
  readonly feedLPerMin: number;
  readonly permeateLPerMin: number;
  readonly feedMgPerL: number;
  readonly permeateMgPerL: number;
  readonly flowing: boolean;
  readonly bypass: "none" | "shut" | "open";
}

const X = 40;
/** Thickness of the line in px: 16 px for each L/min, never thinner than 3. */
const thick = (lPerMin: number) => Math.max(3, 16 * Math.min(2, lPerMin));

/**
 * The water down the left edge of a unit's bands: as thick as its flow, as deep in colour as its dissolved solids.
 * At the element the permeate parts from the drain. Hidden from screen readers: the bands say it in words.
 */
export function lineOfWater(request: LineOfWaterRequest): string {
  const { bands, width } = request;
  const height = Math.max(1, ...bands.map((band) => band.y + band.height));
  const element = bands.find((band) => band.part === "element");
  const split = element ? element.y + element.height : height;
  const feed = column(
    request,
    0,
    element ? element.y + 10 : height,
    X,
    request.feedLPerMin,
    request.feedMgPerL,
  );
  const permeate = element
    ? column(request, split, height, X - 13, request.permeateLPerMin, request.permeateMgPerL)
    : "";
  const body = `${feed}${element ? elementPart(request, element) : ""}${permeate}${bypassLine(request, height)}${bands.map((band) => partOf(request, band)).join("")}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" aria-hidden="true">${body}</svg>`;
}

function column(
  request: LineOfWaterRequest,
  from: number,
  to: number,
  x: number,
  flow: number,
  mgPerL: number,
): string {
  const { ink } = COLOURS[request.theme];
  const half = thick(flow) / 2;
  const walls = `M${x - half} ${from}V${to}M${x + half} ${from}V${to}`;
  if (!request.flowing)
    return `<path d="${walls}" stroke="${ink}" stroke-width="2" stroke-dasharray="5 4" fill="none"/>`;
  return `<rect x="${x - half}" y="${from}" width="${2 * half}" height="${to - from}" fill="${waterColour(mgPerL, request.theme)}"/><path d="${walls}" stroke="${ink}" stroke-width="1.5" fill="none"/>`;
}

/** The element: the feed side narrows to the drain, the permeate side widens, the membrane dashed between. */
function elementPart(request: LineOfWaterRequest, band: WaterBand): string {
  const { ink } = COLOURS[request.theme];
  const top = band.y + 10;
  const bottom = band.y + band.height;
  const bend = bottom - 24;
  const feed = thick(request.feedLPerMin) / 2;
  const drain = thick(request.feedLPerMin - request.permeateLPerMin);
  const right = X + feed;
  const left = right - drain;
  const deep = waterColour(request.feedMgPerL * 1.25, request.theme);
  const end = Math.min(request.width, 190);
  const shape = `M${X - feed} ${top}L${left} ${bend}Q${left} ${bend + 20} ${left + 22} ${bend + 20}H${end}V${bend + 20 - drain}H${right + 6}Q${right} ${bend + 20 - drain} ${right} ${bend - drain}V${top}Z`;
  const pale = waterColour(request.permeateMgPerL, request.theme);
  const thin = thick(request.permeateLPerMin) / 2;
  const permeate = `M${X - feed} ${top}L${X - 13 + thin} ${bottom}H${X - 13 - thin}V${top + 12}Z`;
  if (!request.flowing)
    return `<path d="${shape}" fill="none" stroke="${ink}" stroke-width="2" stroke-dasharray="5 4"/>`;
  return `<path d="${permeate}" fill="${pale}" stroke="${ink}" stroke-width="1.5"/><path d="${shape}" fill="${deep}" stroke="${ink}" stroke-width="1.5"/><path d="M${X - feed} ${top}L${left} ${bend}" stroke="${ink}" stroke-width="3.4" stroke-dasharray="6 3"/>`;
}

function bypassLine(request: LineOfWaterRequest, height: number): string {
  const { ink } = COLOURS[request.theme];
  if (request.bypass === "none") return "";
  const open = request.bypass === "open";
  const dash = open ? "" : ' stroke-dasharray="5 4"';
  const path = `M${X - 12} 22H11V${height - 30}H${X - 18}`;
  const valve = open
    ? `<path d="M11 ${height / 2 - 13}V${height / 2 + 13}" stroke="${ink}" stroke-width="8"/>`
    : `<path d="M2 ${height / 2}H20" stroke="${ink}" stroke-width="8"/>`;
  return `<path d="${path}" fill="none" stroke="${ink}" stroke-width="${open ? 6 : 2}"${dash}/>${valve}`;
}

function partOf(request: LineOfWaterRequest, band: WaterBand): string {
  const { ink, ground } = COLOURS[request.theme];
  const y = band.y + band.height / 2;
  const permeateSide =
    band.side === "permeate" || band.part === "tank" || band.part === "postFilter" || band.part === "outlet";
  const x = permeateSide ? X - 13 : X;
  const box = (w: number, h: number) =>
    `<rect x="${x - w / 2}" y="${y - h / 2}" width="${w}" height="${h}" fill="${ground}" stroke="${ink}" stroke-width="3"/>`;
  const rules = (w: number, h: number) =>
    [-1, 0, 1]
      .map(
        (i) => `<path d="M${x - w / 2} ${y + (i * h) / 4}H${x + w / 2}" stroke="${ink}" stroke-width="2"/>`,
      )
      .join("");
  const bodies: Readonly<Record<BandPart, string>> = {
    tap: `<path d="M${X - 19} ${band.y + 2}H${X + 19}" stroke="${ink}" stroke-width="5"/>`,
    cartridge: box(42, 40) + rules(42, 40),
    shutOff: `<path d="M${x} ${y - 14}V${y + 14}" stroke="${ground}" stroke-width="14"/><path d="M${x} ${y - 14}V${y + 14}" stroke="${ink}" stroke-width="8"/>`,
    element: "",
    tank: `${box(46, Math.min(58, band.height - 16))}<rect x="${x - 21.5}" y="${y - 14}" width="43" height="${Math.min(58, band.height - 16) / 2 + 12}" fill="${waterColour(request.permeateMgPerL, request.theme)}"/><path d="M${x - 23} ${y - 14}H${x + 23}" stroke="${ink}" stroke-width="2"/>`,
    postFilter: box(20, 24) + rules(20, 24),
    outlet: `<path d="M${x - 12} ${band.y + band.height - 18}H${x + 12}" stroke="${ink}" stroke-width="5"/>`,
    plain: "",
  };
  return bodies[band.part] + markAt(band, x, y, ink, ground);
}

function markAt(band: WaterBand, x: number, y: number, ink: string, ground: string): string {
  if (band.mark === "read")
    return `<circle cx="${x}" cy="${y}" r="8" fill="${ink}" stroke="${ground}" stroke-width="2.5"/>`;
  if (band.mark !== "expected") return "";
  const whisker = `M${x} ${y - 18}V${y + 18}M${x - 8} ${y - 18}H${x + 8}M${x - 8} ${y + 18}H${x + 8}`;
  return `<path d="${whisker}" stroke="${ground}" stroke-width="6"/><path d="${whisker}" stroke="${ink}" stroke-width="2.5"/><circle cx="${x}" cy="${y}" r="7" fill="${ground}" stroke="${ink}" stroke-width="2.5"/>`;
}
