import { simpleUnit, type Unit } from "@tapside/reverse-osmosis";
import { APPLY } from "./apply-cause.ts";
import { CAUSES, type CauseId, COMPLAINTS, type Complaint } from "./causes.ts";
import { type Hidden, soundHidden } from "./hidden.ts";
import { between, drawIndex, normal, type Random } from "./random.ts";
import type { Scene } from "./scene.ts";

/** How a truth differs from the model it is diagnosed with: wider units, other laws, heavier tails. */
export interface Alteration {
  readonly spread: number;
  readonly restrictorExponent: number;
  readonly perDegree: number;
  readonly polarisation: number;
  readonly noise: "normal" | "student4";
}

export const AS_MODELLED: Alteration = {
  spread: 1,
  restrictorExponent: 0.5,
  perDegree: 1.03,
  polarisation: 1,
  noise: "normal",
};

/** Source: the altered truth of the feasibility study (exponents, 2.7 % a degree, 25 % wider, Student t with 4 degrees). */
export const ALTERED: Alteration = {
  spread: 1.25,
  restrictorExponent: 0.6,
  perDegree: 1.027,
  polarisation: 1.02,
  noise: "student4",
};

export interface Place {
  readonly scene: Scene;
  readonly hidden: Hidden;
}

const TANKS_L = [12, 20, 30, 53, 53, 80];

/** Unit as it was sold and set: label values, clean, sound. Ranges: assumed, common practice, no source. */
function drawUnit(random: Random, booster: boolean, blend: boolean, remineraliser: boolean): Unit {
  const permeateLPerH = between(random, 10, 40);
  const element = {
    areaM2: permeateLPerH / 16,
    waterLPerM2HBar: 4.2 * Math.exp(0.12 * normal(random)),
    saltLPerM2H: 0.62 * Math.exp(0.25 * normal(random)),
    polarisation: between(random, 1.05, 1.15),
  };
  const restrictor = { ratedLPerH: permeateLPerH * between(random, 1.2, 3.2), ratedKPa: 414 };
  const tank = {
    volumeL: TANKS_L[Math.floor(random() * TANKS_L.length)]!,
    airChargeKPaGauge: random() < 0.7 ? between(random, 40, 80) : between(random, 80, 130),
  };
  const base = simpleUnit(element, restrictor, tank);
  return {
    ...base,
    cartridges: [{ id: "preFilters", dropKPa: 10, atLPerH: 80 }],
    outletCartridges: [{ id: "postFilter", dropKPa: 25, atLPerH: 120 }],
    ...(booster && { booster: { shutOffRiseKPa: between(random, 180, 320), openFlowLPerH: 350 } }),
    ...(blend && { blendFraction: between(random, 0.05, 0.3) }),
    ...(remineraliser && { addedMgPerL: between(random, 15, 60) }),
  };
}

const lognormal = (random: Random, sd: number): number => Math.exp(sd * normal(random));

/** The unit as it hangs there: scattered about what the record says of it. */
function scattered(unit: Unit, baseline: Scene["baseline"], random: Random, altered: Alteration): Unit {
  const known = baseline === "commissioned" ? { a: 0.05, b: 0.12, r: 0.05 } : { a: 0.13, b: 0.28, r: 0.09 };
  const wide = altered.spread;
  return {
    ...unit,
    cartridges: unit.cartridges.map((one) => ({ ...one, clogging: lognormal(random, 0.5 * wide) })),
    outletCartridges: (unit.outletCartridges ?? []).map((one) => ({
      ...one,
      clogging: lognormal(random, 0.2 * wide),
    })),
    elements: unit.elements.map((one) => ({
      ...one,
      waterLPerM2HBar: one.waterLPerM2HBar * lognormal(random, known.a * wide),
      saltLPerM2H: one.saltLPerM2H * lognormal(random, known.b * wide),
      polarisation: 1 + (one.polarisation - 1) * lognormal(random, 0.15 * wide) * altered.polarisation,
    })),
    restrictor: { ...unit.restrictor, scale: lognormal(random, known.r * wide) },
    shutOff: { ratio: unit.shutOff.ratio + 0.02 * wide * normal(random) },
    tanks: unit.tanks.map((tank) => ({
      ...tank,
      airChargeKPaGauge: Math.max(5, tank.airChargeKPaGauge + 7 * wide * normal(random)),
    })),
  };
}

const AGES: Readonly<
  Partial<Record<CauseId, { readonly years?: number; readonly carbon?: number; readonly months?: number }>>
> = {
  fouledMembrane: { years: 3.5 },
  scaledMembrane: { years: 2.8 },
  oxidisedMembrane: { years: 2.8, carbon: 0.9 },
  carbonExhausted: { carbon: 1.3 },
  preFilterClogged: { months: 14 },
};

function drawContext(causes: readonly CauseId[], random: Random) {
  const median = (pick: (age: (typeof AGES)[CauseId]) => number | undefined, usual: number) =>
    Math.max(usual, ...causes.map((cause) => pick(AGES[cause]) ?? 0));
  const years = median((age) => age?.years, 1.8) * lognormal(random, 0.55);
  const carbon = median((age) => age?.carbon, 0.4) * lognormal(random, 0.5);
  const months = median((age) => age?.months, 7) * lognormal(random, 0.5);
  return {
    complaint: drawComplaint(causes, random),
    ...(random() < 0.85 && { elementYears: Math.min(years, 12) }),
    ...(random() < 0.75 && { carbonShare: Math.min(carbon, 6) }),
    ...(random() < 0.85 && { filterMonths: Math.min(months, 60) }),
  };
}

function drawComplaint(causes: readonly CauseId[], random: Random): Complaint {
  const loudest = causes[Math.floor(random() * causes.length)]!;
  const weights = CAUSES[loudest].complaints.map((weight) => weight + 0.4);
  return COMPLAINTS[drawIndex(random, weights)]!;
}

/** What the situation at the place is today, before anything is wrong. */
function today(scene: Scene, hung: Unit, random: Random, altered: Alteration): Hidden {
  const sound = soundHidden(scene);
  const { usual } = scene;
  const temperatureC = Math.min(30, Math.max(10, usual.temperatureC + 3 * normal(random)));
  const pressure = usual.feedPressureKPaGauge * lognormal(random, 0.06);
  const strength = (altered.perDegree / 1.03) ** (temperatureC - 25);
  const bend = (pressure / 414) ** (altered.restrictorExponent - 0.5);
  const elements = hung.elements.map((one) => ({ ...one, waterLPerM2HBar: one.waterLPerM2HBar * strength }));
  const restrictor = { ...hung.restrictor, scale: (hung.restrictor.scale ?? 1) * bend };
  const permeate = elements.reduce((sum, one) => sum + one.areaM2 * one.waterLPerM2HBar * 4, 0);
  return {
    ...sound,
    situation: {
      unit: { ...hung, elements, restrictor },
      conditions: {
        feedPressureKPaGauge: pressure,
        temperatureC,
        feedMgPerL: usual.feedMgPerL * lognormal(random, 0.09 * altered.spread),
        tankPressureKPaGauge: 0,
      },
    },
    staticPressureKPaGauge: pressure * between(random, 1.02, 1.14),
    chlorineMgPerL: usual.chlorineMgPerL * lognormal(random, 0.25),
    carbonPass: 0.02 * lognormal(random, 0.6),
    hardnessMgPerL: usual.hardnessMgPerL * lognormal(random, scene.softener ? 0.5 : 0.12),
    firstDrawFactor: 1 + 0.4 * lognormal(random, 0.4),
    dailyLitres: 24 * permeate * 0.18 * lognormal(random, 0.4),
  };
}

/** A place where such causes can be, with its unit and its water; nothing is wrong there yet. */
export function drawPlaceFor(
  causes: readonly CauseId[],
  random: Random,
  altered: Alteration = AS_MODELLED,
): Place {
  const softener = causes.includes("softenerFailed") || random() < 0.4;
  const booster = causes.includes("boosterWeak") || random() < 0.12;
  const blendValve = random() < 0.12;
  const remineraliser = random() < 0.12;
  const unit = drawUnit(random, booster, blendValve, remineraliser);
  const feedPressureKPaGauge = between(random, booster ? 180 : 280, booster ? 380 : 560);
  const scene: Scene = {
    unit,
    baseline: random() < 0.7 ? "commissioned" : "label",
    usual: {
      feedPressureKPaGauge,
      staticPressureKPaGauge: feedPressureKPaGauge * 1.08,
      temperatureC: between(random, 11, 24),
      feedMgPerL: 260 * lognormal(random, 0.5),
      chlorineMgPerL: between(random, 0.3, 1.8),
      hardnessMgPerL: softener ? 12 : between(random, 60, 320),
    },
    softener,
    remineraliser,
    blendValve,
    ...drawContext(causes, random),
    ...(!booster && { impossible: ["elementPressure"] }),
  };
  return { scene, hidden: drawTruth(scene, random, altered) };
}

/** A place with its unit, its water and its causes at work. */
export function drawPlace(
  causes: readonly CauseId[],
  random: Random,
  altered: Alteration = AS_MODELLED,
): Place {
  const { scene, hidden } = drawPlaceFor(causes, random, altered);
  return { scene, hidden: withCauses(hidden, causes, random, altered) };
}

/** A sound truth of a scene: its unit scattered about the record, its water as it may be today. */
export const drawTruth = (scene: Scene, random: Random, altered: Alteration = AS_MODELLED): Hidden =>
  today(scene, scattered(scene.unit, scene.baseline, random, altered), random, altered);

/** The causes at work in one truth, sizes drawn; an altered truth reaches past the usual ranges at both ends. */
export function withCauses(
  hidden: Hidden,
  causes: readonly CauseId[],
  random: Random,
  altered: Alteration = AS_MODELLED,
): Hidden {
  const beyond = (altered.spread - 1) / 4;
  return causes.reduce(
    (truth, cause) => APPLY[cause](truth, between(random, -beyond, 1 + beyond), random),
    hidden,
  );
}
