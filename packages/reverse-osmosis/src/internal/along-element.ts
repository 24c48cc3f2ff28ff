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

/** The same law as `naclOsmoticPressureKPa` at 25 °C, written out flat because it runs hundreds of times per answer. */
export function osmoticKPaAt25(mgPerL: number): number {
  const m = (mgPerL * molalityPerMgPerL) / (997.05 - 0.0003 * mgPerL);
  const root = Math.sqrt(m);
  const phi = 1 - (debye * root) / (1 + b * root) + m * (beta0 + beta1 * Math.exp(-alpha * root) + m * cPhi);
  return phi * idealKPaPerMolality * m;
}

/**
 * Flux at one place, as the flow of the whole area: J = A(Δp − π(Cm) + π(Cp)), Cp = B·Cm/(J + B), Cm − Cp = β(Cb − Cp).
 * The residual rises with J and is negative at J = 0 whenever salt can pass, so there is one root; Newton with the slope
 * of an ideal solution needs two or three steps from the neighbour's flux.
 */
export function wallState(channel: Channel, bulkMgPerL: number, driveKPa: number, guess: number): WallState {
  const { waterLPerHKPa: a, saltLPerH: salt, polarisation: beta, kelvinRatio } = channel;
  const ceiling = a * driveKPa;
  let flux = guess > 0 && guess < ceiling ? guess : ceiling / 2;
  let low = 0;
  let high = ceiling;
  let wall = 0;
  let permeate = 0;
  for (let n = 0; n < 40; n++) {
    const passing = salt / (flux + salt);
    const spread = 1 + passing * (beta - 1);
    wall = (beta * bulkMgPerL) / spread;
    permeate = passing * wall;
    const piWall = osmoticKPaAt25(wall) * kelvinRatio;
    const piPermeate = osmoticKPaAt25(permeate) * kelvinRatio;
    const residual = flux - a * (driveKPa - piWall + piPermeate);
    if (residual > 0) high = flux;
    else low = flux;
    const passingSlope = -passing / (flux + salt);
    const wallSlope = (-wall * (beta - 1) * passingSlope) / spread;
    const permeateSlope = wall * passingSlope + passing * wallSlope;
    const slope =
      1 +
      a *
        ((wall > 0 ? (piWall / wall) * wallSlope : 0) -
          (permeate > 0 ? (piPermeate / permeate) * permeateSlope : 0));
    let next = flux - residual / slope;
    if (!(next >= low && next <= high)) next = (low + high) / 2;
    const step = Math.abs(next - flux);
    if (step <= 1e-10 * ceiling) break;
    flux = next;
  }
  return { fluxLPerH: flux, permeateMgPerL: permeate, wallMgPerL: wall };
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
