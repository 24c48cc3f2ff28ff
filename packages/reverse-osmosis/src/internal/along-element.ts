import { naclPitzer } from "../nacl-osmotic-coefficient.ts";

/** A channel with its constants already at temperature and multiplied by area. */
export interface Channel {
  /** A·S at temperature, L/h per kPa. */
  readonly waterLPerHKPa: number;
  /** B·S at temperature, L/h. */
  readonly saltLPerH: number;
  readonly polarisation: number;
  /** Absolute temperature over 298.15 K. */
  readonly kelvinRatio: number;
  readonly segments: number;
}

export interface ChannelEnd {
  readonly permeateLPerH: number;
  readonly permeateSaltMgPerH: number;
  readonly concentrateLPerH: number;
  readonly concentrateSaltMgPerH: number;
}

export interface WallState {
  readonly fluxLPerH: number;
  readonly permeateMgPerL: number;
  readonly wallMgPerL: number;
}

const { debye, b, alpha, beta0, beta1, cPhi } = naclPitzer;
const idealKPaPerMolality = (2 * 8.314462618 * 298.15 * 997.05) / 1000;
const molalityPerMgPerL = 1 / 58.443;

/**
 * The same law as `naclOsmoticPressureKPa` at 25 °C with its slope, written out flat because it runs hundreds of times per
 * answer. `out` receives π in kPa and dπ/dC in kPa per mg/L.
 */
function osmoticAt25(mgPerL: number, out: { pi: number; slope: number }): void {
  const water = 997.05 - 0.0003 * mgPerL;
  const m = (mgPerL * molalityPerMgPerL) / water;
  const root = Math.sqrt(m);
  const fall = 1 / (1 + b * root);
  const short = beta1 * Math.exp(-alpha * root);
  const phi = 1 - debye * root * fall + m * (beta0 + short + m * cPhi);
  const slopePhiTimesM =
    -0.5 * debye * root * fall * fall + m * (beta0 + short * (1 - 0.5 * alpha * root) + 2 * m * cPhi);
  out.pi = phi * idealKPaPerMolality * m;
  out.slope = ((phi + slopePhiTimesM) * idealKPaPerMolality * molalityPerMgPerL * 997.05) / (water * water);
}

/**
 * Flux at one place, as the flow of the whole area: J = A(Δp − π(Cm) + π(Cp)), Cp = B·Cm/(J + B), Cm − Cp = β(Cb − Cp).
 * The residual rises with J and is negative at J = 0 whenever salt can pass, so there is one root; Newton inside a
 * shrinking bracket needs two steps from the neighbour's flux.
 */
export function wallState(channel: Channel, bulkMgPerL: number, driveKPa: number, guess: number): WallState {
  const { waterLPerHKPa: a, saltLPerH: salt, polarisation: beta, kelvinRatio } = channel;
  const ceiling = a * driveKPa;
  const atWall = { pi: 0, slope: 0 };
  const atPermeate = { pi: 0, slope: 0 };
  let flux = guess > 0 && guess < ceiling ? guess : ceiling / 2;
  let low = 0;
  let high = ceiling;
  for (let n = 0; n < 60; n++) {
    const passing = salt / (flux + salt);
    const spread = 1 + passing * (beta - 1);
    const wall = (beta * bulkMgPerL) / spread;
    osmoticAt25(wall, atWall);
    osmoticAt25(passing * wall, atPermeate);
    const residual = flux - a * (driveKPa - kelvinRatio * (atWall.pi - atPermeate.pi));
    if (residual > 0) high = flux;
    else low = flux;
    const passingSlope = -passing / (flux + salt);
    const wallSlope = (-wall * (beta - 1) * passingSlope) / spread;
    const permeateSlope = wall * passingSlope + passing * wallSlope;
    const slope = 1 + a * kelvinRatio * (atWall.slope * wallSlope - atPermeate.slope * permeateSlope);
    let next = flux - residual / slope;
    if (!(next >= low && next <= high)) next = (low + high) / 2;
    const step = Math.abs(next - flux);
    flux = next;
    if (step <= 1e-6 * ceiling) break;
  }
  const passing = salt / (flux + salt);
  const wallMgPerL = (beta * bulkMgPerL) / (1 + passing * (beta - 1));
  return { fluxLPerH: flux, permeateMgPerL: passing * wallMgPerL, wallMgPerL };
}

/**
 * Plug flow from feed to concentrate by the midpoint rule. Water and salt leave the bulk exactly as they enter the permeate, so
 * both balances close to rounding at any number of segments.
 */
export function alongElement(
  channel: Channel,
  feedLPerH: number,
  feedMgPerL: number,
  driveKPa: number,
  dropKPa = 0,
): ChannelEnd {
  const share = 1 / channel.segments;
  let flow = feedLPerH;
  let salt = feedLPerH * feedMgPerL;
  let water = 0;
  let passed = 0;
  let guess = channel.waterLPerHKPa * driveKPa * 0.9;
  for (let i = 0; i < channel.segments; i++) {
    const drive = driveKPa - dropKPa * (i + 0.5) * share;
    if (!(drive > 0)) break;
    const start = wallState(channel, salt / flow, drive, guess);
    const half = Math.min(start.fluxLPerH * share * 0.5, 0.45 * flow);
    const middleFlow = flow - half;
    const middleSalt = salt - half * start.permeateMgPerL;
    const middle = wallState(channel, middleSalt / middleFlow, drive, start.fluxLPerH);
    const step = Math.min(middle.fluxLPerH * share, 0.9 * flow);
    const stepSalt = Math.min(step * middle.permeateMgPerL, 0.9 * salt);
    water += step;
    passed += stepSalt;
    flow -= step;
    salt -= stepSalt;
    guess = middle.fluxLPerH;
  }
  return {
    permeateLPerH: water,
    permeateSaltMgPerH: passed,
    concentrateLPerH: flow,
    concentrateSaltMgPerH: salt,
  };
}
