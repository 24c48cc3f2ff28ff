import { known, missing, type Outcome, refused } from "@tapside/quantities";
import { chargeSet, type KeptVisit, type Phase, partsInService, type UnitFile } from "@tapside/records";
import {
  atmosphericPressureKPa,
  type Booster,
  boosterByTwoPoints,
  boosterRiseKPa,
  type Element,
  elementFromNameplate,
  linesAsFound,
  type Nameplate,
  type Restrictor,
  restrictorAsFound,
  restrictorAsRead,
  type Unit,
  usualDrainLPerH,
  usualShutOffRatio,
} from "@tapside/reverse-osmosis";
import type { Scene } from "./scene.ts";
import { signValue } from "./sign-value.ts";

/** Clean pre-filters, kPa at L/h. Common practice, no source. */
const CLEAN = { dropKPa: 10, atLPerH: 80 } as const;
const USUAL_CHARGE_KPA = 55;
/** Below the appliance's own minimum pressure: the charge that gives it most water. Common practice. */
const BELOW_MINIMUM_KPA = 14;
/** Delivered solids above the membrane's are right behind a remineraliser; how much it adds is rarely known. */
const USUAL_ADDED_MG_PER_L = 30;
const USUAL_BLEND = 0.1;
/** A small pump behind a vented tank. Common practice, no source. */
const USUAL_PUMP = { shutOffRiseKPa: 300, openFlowLPerH: 600 } as const;

interface Plates {
  readonly plate: Nameplate;
  readonly restrictor: Restrictor;
  readonly baseline: Scene["baseline"];
}

/** Two equal elements are one of twice the area. */
const areaOf = ({ unit }: UnitFile): number | undefined =>
  unit.membraneAreaM2 && unit.membraneAreaM2 * (unit.twoElements ? 2 : 1);

const boosterOf = ({ unit }: UnitFile): Booster | undefined =>
  boosterByTwoPoints(unit.boosterShutOffRiseKPa, unit.boosterOpenFlowLPerH, unit.boosterOffBelowKPaGauge);

/** A visit's readings as if they were a label. */
function plateOfVisit(visit: KeptVisit, file: UnitFile): Plates | undefined {
  const [areaM2, booster] = [areaOf(file), boosterOf(file)];
  for (const phase of ["asLeft", "asFound"] as const) {
    const slots = visit.readings[phase];
    const permeateLPerH = signValue("permeateFlow", slots.permeateFlow);
    const drain = signValue("drainFlow", slots.drainFlow);
    const product = signValue("permeateTds", slots.permeateTds);
    const feedMgPerL = signValue("feedTds", slots.feedTds ?? visit.readings.asFound.feedTds);
    const temperatureC = signValue(
      "feedTemperature",
      slots.feedTemperature ?? visit.readings.asFound.feedTemperature,
    );
    if (!permeateLPerH || !drain || !product || !feedMgPerL || temperatureC === undefined) continue;
    const after = signValue("afterFilterPressure", slots.afterFilterPressure);
    const before = signValue("beforeFilterPressure", slots.beforeFilterPressure);
    const lost = CLEAN.dropKPa * ((permeateLPerH + drain) / CLEAN.atLPerH) ** 1.3;
    const behindFilters = after ?? (before === undefined ? undefined : before - lost);
    if (!behindFilters) continue;
    const rise = booster ? boosterRiseKPa(booster, before ?? behindFilters, permeateLPerH + drain) : 0;
    const pressureKPaGauge = behindFilters + rise;
    return {
      plate: {
        permeateLPerH,
        rejectLPerH: drain,
        rejection: 1 - product / feedMgPerL,
        pressureKPaGauge,
        temperatureC,
        feedMgPerL,
        ...(areaM2 && { areaM2 }),
      },
      restrictor: restrictorAsRead(restrictorAsFound(file.unit), {
        drainLPerH: drain,
        pressureKPaGauge,
        temperatureC,
        drainTubes: linesAsFound(file.unit).drainTubes,
      }),
      baseline: "commissioned",
    };
  }
  return undefined;
}

function plateOfLabel({ unit }: UnitFile): Plates | undefined {
  const elements = unit.twoElements ? 2 : 1;
  const permeateLPerH = elements * (unit.ratedPermeateLPerH ?? 0);
  const pressureKPaGauge = unit.testPressureKPaGauge ?? 414;
  if (!permeateLPerH || !unit.ratedRejectionPercent) return undefined;
  const reject = unit.ratedRejectLPerH
    ? elements * unit.ratedRejectLPerH
    : usualDrainLPerH(permeateLPerH, unit.ratedRecoveryPercent);
  const found = restrictorAsFound(unit);
  return {
    plate: {
      permeateLPerH,
      rejectLPerH: reject,
      rejection: unit.ratedRejectionPercent / 100,
      pressureKPaGauge,
      temperatureC: unit.testTemperatureC ?? 25,
      feedMgPerL: unit.testFeedMgPerL ?? 500,
      ...(unit.membraneAreaM2 && { areaM2: elements * unit.membraneAreaM2 }),
    },
    restrictor:
      found.kind === "known"
        ? found.value
        : { kind: "rated", ratedLPerH: reject, ratedKPa: pressureKPaGauge },
    baseline: "label",
  };
}

/** Readings of the hand-over that belongs to the element the water went through, else the label. */
function platesOf(file: UnitFile, today: KeptVisit, phase: Phase): Plates | undefined {
  const element = partsInService(file, today, phase, "element").at(-1);
  const since = (element?.fittedOn ?? "").slice(0, 10);
  const handOver = file.visits.find(
    (visit) =>
      visit.id !== today.id &&
      visit.kind === "commissioning" &&
      (visit.startedAt ?? "") <= (today.startedAt ?? "9999") &&
      (visit.startedAt ?? "").slice(0, 10) >= since,
  );
  const own = handOver && plateOfVisit(handOver, file);
  return own ?? plateOfLabel(file);
}

/** The charge as it was last left, else as the appliances behind it need it. */
function chargeOf(file: UnitFile, today: KeptVisit): number {
  for (const visit of [...file.visits].reverse()) {
    if (visit.id === today.id || (visit.startedAt ?? "") > (today.startedAt ?? "")) continue;
    const { airCharge = chargeSet(visit) } = visit.readings.asLeft;
    if (airCharge === "notWritten") break;
    const left = signValue("airCharge", airCharge ?? visit.readings.asFound.airCharge);
    if (left !== undefined) return left;
  }
  const needs = file.appliances.map((one) => (one.minimumPressureKPaGauge ?? 0) - BELOW_MINIMUM_KPA);
  return Math.max(USUAL_CHARGE_KPA, ...needs);
}

/** The unit of a record as physics: sound, clean, set as it was left. Missing: the label's fields that would be needed. */
export function unitOfFile(
  file: UnitFile,
  today: KeptVisit,
  phase: Phase,
): Outcome<{ readonly unit: Unit; readonly baseline: Scene["baseline"] }> {
  // The network never saw such a unit, and what is usual of its tank is not what it learned.
  if (file.unit.permeatePump && !file.unit.ventedTank) return refused("permeate-pump-untrained");
  const plates = platesOf(file, today, phase);
  if (!plates) return missing("unit.ratedPermeateLPerH", "unit.ratedRejectionPercent");
  const element = elementFromNameplate(plates.plate);
  if (element.kind !== "known") return element;
  return known({ unit: composed(file, today, element.value, plates.restrictor), baseline: plates.baseline });
}

/** Two equal tanks at one charge are one of twice the volume. */
const tankOf = (volumeL: number, file: UnitFile, today: KeptVisit) => ({
  volumeL,
  airChargeKPaGauge: file.unit.ventedTank ? 0 : chargeOf(file, today),
});

function composed(file: UnitFile, today: KeptVisit, element: Element, restrictor: Restrictor): Unit {
  const { unit, site } = file;
  const booster = boosterOf(file);
  return {
    cartridges: [{ id: "preFilters", ...CLEAN }],
    elements: [element],
    restrictor,
    shutOff: { ratio: unit.shutOffRatio ?? usualShutOffRatio.middle },
    tanks: unit.tankL ? [tankOf(unit.tankL * (unit.twoTanks ? 2 : 1), file, today)] : [],
    ...(unit.ventedTank && ({ storage: "vented", rePressure: USUAL_PUMP } as const)),
    atmosphericKPa: Math.max(60, atmosphericPressureKPa(site.altitudeM ?? 0)),
    outletCartridges: [{ id: "postFilter", dropKPa: 25, atLPerH: 120 }],
    ...linesAsFound(unit),
    ...(booster && { booster }),
    ...(unit.blendValve && { blendFraction: USUAL_BLEND }),
    ...(unit.remineraliser && { addedMgPerL: USUAL_ADDED_MG_PER_L }),
  };
}
