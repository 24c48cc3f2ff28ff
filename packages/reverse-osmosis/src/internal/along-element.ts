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
const slopeUnit = idealKPaPerMolality * molalityPerMgPerL * 997.05;

/**
 * The same law as `naclOsmoticPressureKPa` at 25 °C with its slope, written out flat because it runs hundreds of times per
 * answer. `out` receives π in kPa and dπ/dC in kPa per mg/L.
 */
function osmoticAt25(mgPerL: number, out: { pi: number; slope: number }): void {
  const perWater = 1 / (997.05 - 0.0003 * mgPerL);
  const m = mgPerL * molalityPerMgPerL * perWater;
  const root = Math.sqrt(m);
  const fall = 1 / (1 + b * root);
  const short = beta1 * fadingExp(alpha * root);
  const phi = 1 - debye * root * fall + m * (beta0 + short + m * cPhi);
  const slopePhiTimesM =
    -0.5 * debye * root * fall * fall + m * (beta0 + short * (1 - 0.5 * alpha * root) + 2 * m * cPhi);
  out.pi = phi * idealKPaPerMolality * m;
  out.slope = (phi + slopePhiTimesM) * slopeUnit * perWater * perWater;
}

/** e^−x; permeate is so dilute that five terms leave less than 1e-11 of φ. */
const fadingExp = (x: number): number =>
  x < 0.1 ? 1 - x * (1 - x * (1 / 2 - x * (1 / 6 - x * (1 / 24 - x / 120)))) : Math.exp(-x);

/** The numbers that one search for a flux needs and leaves, kept so that nothing is allocated per place. */
interface Workbench {
  fluxLPerH: number;
  permeateMgPerL: number;
  wallMgPerL: number;
  readonly atWall: { pi: number; slope: number };
  readonly atPermeate: { pi: number; slope: number };
}

const workbench = (): Workbench => ({
  fluxLPerH: 0.5,
  permeateMgPerL: 0.5,
  wallMgPerL: 0.5,
  atWall: { pi: 0.5, slope: 0.5 },
  atPermeate: { pi: 0.5, slope: 0.5 },
});

/** Newton doubles its digits, so a last step below this share leaves an error of about its square. */
const lastStep = 1e-5;

function solveWall(
  channel: Channel,
  bulkMgPerL: number,
  driveKPa: number,
  guess: number,
  out: Workbench,
): void {
  const { waterLPerHKPa: a, saltLPerH: salt, polarisation: beta, kelvinRatio } = channel;
  const { atWall, atPermeate } = out;
  const ceiling = a * driveKPa;
  let flux = guess > 0 && guess < ceiling ? guess : ceiling / 2;
  let low = 0;
  let high = ceiling;
  for (let n = 0; n < 60; n++) {
    const inverse = 1 / (flux + salt);
    const passing = salt * inverse;
    const perSpread = 1 / (1 + passing * (beta - 1));
    const wall = beta * bulkMgPerL * perSpread;
    osmoticAt25(wall, atWall);
    osmoticAt25(passing * wall, atPermeate);
    const residual = flux - a * (driveKPa - kelvinRatio * (atWall.pi - atPermeate.pi));
    if (residual > 0) high = flux;
    else low = flux;
    const passingSlope = -passing * inverse;
    const wallSlope = -wall * (beta - 1) * passingSlope * perSpread;
    const permeateSlope = wall * passingSlope + passing * wallSlope;
    const slope = 1 + a * kelvinRatio * (atWall.slope * wallSlope - atPermeate.slope * permeateSlope);
    let next = flux - residual / slope;
    if (!(next >= low && next <= high)) next = (low + high) / 2;
    const step = Math.abs(next - flux);
    flux = next;
    if (step <= lastStep * (flux + salt)) break;
  }
  const passing = salt / (flux + salt);
  out.fluxLPerH = flux;
  out.wallMgPerL = (beta * bulkMgPerL) / (1 + passing * (beta - 1));
  out.permeateMgPerL = passing * out.wallMgPerL;
}

/**
 * Flux at one place, as the flow of the whole area: J = A(Δp − π(Cm) + π(Cp)), Cp = B·Cm/(J + B), Cm − Cp = β(Cb − Cp).
 * The residual rises with J and is negative at J = 0 whenever salt can pass, so there is one root; Newton inside a
 * shrinking bracket needs one or two steps from the neighbour's flux.
 */
export function wallState(channel: Channel, bulkMgPerL: number, driveKPa: number, guess: number): WallState {
  const out = workbench();
  solveWall(channel, bulkMgPerL, driveKPa, guess, out);
  const { fluxLPerH, permeateMgPerL, wallMgPerL } = out;
  return { fluxLPerH, permeateMgPerL, wallMgPerL };
}

/** Steps along one channel, again and again at neighbouring flows: each run starts from the fluxes the last one found. */
export type AlongElement = (
  feedLPerH: number,
  feedMgPerL: number,
  driveKPa: number,
  dropKPa?: number,
) => ChannelEnd;

/**
 * Plug flow from feed to concentrate by the midpoint rule. Water and salt leave the bulk exactly as they enter the permeate, so
 * both balances close to rounding at any number of segments.
 */
export function alongElement(channel: Channel): AlongElement {
  const share = 1 / channel.segments;
  const place = workbench();
  /** Two a segment, at its start and in its middle; 0 = not known yet. */
  const flux = new Float64Array(2 * channel.segments);
  const lastRun = new Float64Array(2 * channel.segments);
  /** Last run's flux here, moved as its neighbour moved; in the first run a parabola through the three before. */
  const guessAt = (index: number, firstLPerH: number) => {
    if (lastRun[index]! > 0)
      return index > 0 ? (lastRun[index]! * flux[index - 1]!) / lastRun[index - 1]! : lastRun[0]!;
    if (index > 2) return 3 * (flux[index - 1]! - flux[index - 2]!) + flux[index - 3]!;
    return index > 0 ? flux[index - 1]! : firstLPerH;
  };
  const solve = (index: number, bulkMgPerL: number, driveKPa: number) => {
    solveWall(channel, bulkMgPerL, driveKPa, guessAt(index, channel.waterLPerHKPa * driveKPa * 0.9), place);
    flux[index] = place.fluxLPerH;
  };
  return (feedLPerH, feedMgPerL, driveKPa, dropKPa = 0) => {
    let flow = feedLPerH;
    let salt = feedLPerH * feedMgPerL;
    let water = 0;
    let passed = 0;
    lastRun.set(flux);
    for (let i = 0; i < channel.segments; i++) {
      const drive = driveKPa - dropKPa * (i + 0.5) * share;
      if (!(drive > 0)) break;
      solve(2 * i, salt / flow, drive);
      const half = Math.min(place.fluxLPerH * share * 0.5, 0.45 * flow);
      solve(2 * i + 1, (salt - half * place.permeateMgPerL) / (flow - half), drive);
      const step = Math.min(place.fluxLPerH * share, 0.9 * flow);
      const stepSalt = Math.min(step * place.permeateMgPerL, 0.9 * salt);
      water += step;
      passed += stepSalt;
      flow -= step;
      salt -= stepSalt;
    }
    return {
      permeateLPerH: water,
      permeateSaltMgPerH: passed,
      concentrateLPerH: flow,
      concentrateSaltMgPerH: salt,
    };
  };
}
