/** What kind of number or look a sign is: decides its scatter and how it is compared. */
export type SignKind =
  | "pressure"
  | "flow"
  | "solids"
  | "temperature"
  | "chlorine"
  | "hardness"
  | "litres"
  | "ratio"
  | "look";

interface Sign {
  readonly kind: SignKind;
  /** One standard deviation of a reading, relative. */
  readonly relative: number;
  /** Added in the sign's own unit: what the smallest readings drown in. */
  readonly floor: number;
}

const sign = (kind: SignKind, relative: number, floor: number): Sign => ({ kind, relative, floor });
const pressure = sign("pressure", 0.03, 2);
const flow = sign("flow", 0.03, 0.1);
const solids = sign("solids", 0.03, 0.4);
const chlorine = sign("chlorine", 0.17, 0.02);
/** A look is 1 (seen) or 0 (not seen); `relative` is the chance that eyes are wrong. */
const look = sign("look", 0.02, 0);

/**
 * Everything that can be read or seen. Pressures kPa gauge, flows L/h, solids mg/L as sodium chloride, chlorine mg/L,
 * hardness mg/L as CaCO3, litres L.
 * Source: scatter 3 % pressure and flow, 2 to 4 % solids, 0.5 °C, 15 to 20 % chlorine, 12 % hardness: assumed, common
 * practice, no source.
 */
export const SIGNS = {
  staticPressure: pressure,
  beforeFilterPressure: pressure,
  afterFilterPressure: pressure,
  elementPressure: pressure,
  temperature: sign("temperature", 0, 0.5),
  feedTds: solids,
  permeateTds: solids,
  permeateFlow: flow,
  drainFlow: flow,
  throttledFlow: flow,
  throttledTds: solids,
  tankFullPressure: pressure,
  drainTankFullFlow: flow,
  drainFeedClosedFlow: flow,
  gasL: sign("litres", 0.09, 0.15),
  drawOffL: sign("litres", 0.05, 0.15),
  outletFlow: flow,
  firstDrawTds: solids,
  deliveredTds: solids,
  flushedTds: solids,
  isolatedTds: solids,
  chlorineBefore: chlorine,
  chlorineAfter: chlorine,
  hardness: sign("hardness", 0.12, 2),
  tdsStandard: sign("ratio", 0.02, 0),
  gaugeCheck: sign("ratio", 0.02, 0),
  airCharge: sign("pressure", 0.03, 2.5),
  drainLineOffFlow: flow,
  dailyLitres: sign("litres", 0.15, 1),
  tankValveShut: look,
  tubingSwapped: look,
  lineKinked: look,
  waterAtAirValve: look,
  meterScaleWrong: look,
  scaleSeen: sign("look", 0.06, 0),
  foulingSeen: sign("look", 0.08, 0),
  brineSealBad: sign("look", 0.03, 0),
  oRingBad: sign("look", 0.03, 0),
} as const satisfies Record<string, Sign>;

export type SignId = keyof typeof SIGNS;

export const SIGN_IDS = Object.keys(SIGNS) as readonly SignId[];

/** What was read, by sign. Any may be missing. */
export type Readings = Readonly<Partial<Record<SignId, number>>>;
