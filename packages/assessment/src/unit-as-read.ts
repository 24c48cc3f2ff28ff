import { converted, known, mapOutcome, missing, type Outcome } from "@tapside/quantities";
import type { UnitFile } from "@tapside/records";
import { type Conditions, type Element, linesAsFound, type Unit } from "@tapside/reverse-osmosis";
import type { Context } from "./assessment.ts";
import {
  CLEAN_FILTER,
  elementFrom,
  nameplateAsReadings,
  physicsUnit,
  standardReadings,
  tankOf,
  temperatureFormOf,
} from "./from-records.ts";
import { amountOf, type PhaseReadings } from "./internal/amounts.ts";
import { lineDropKPa } from "./internal/line-drop.ts";
import type { Visit } from "./internal/parts-in-service.ts";
import { phaseReadings } from "./internal/phase-readings.ts";
import { restrictorFrom } from "./restrictor-from.ts";
import { airChargeKPa, applianceMinimumKPa } from "./tank-figures.ts";
import { filterDropKPa } from "./water-figures.ts";

/** A unit as the model takes it, with the water it was last read at. */
export interface UnitAsRead {
  readonly unit: Unit;
  readonly conditions: Conditions;
  readonly staticFeedKPaGauge?: number;
  /** Lowest pressure of its appliances, kPa gauge; 0 when none is stated. */
  readonly minimumKPaGauge: number;
  /** The visit the element is taken from; none = the nameplate and usual water. */
  readonly visit?: string;
}

const USUAL = { feedKPa: 414, temperatureC: 12, chargeKPa: converted(8, "psi", "kPa") } as const;

/** The unit as its newest complete readings show it, else as its nameplate says at usual pressure and temperature. */
export function unitAsRead(file: UnitFile, context: Context): Outcome<UnitAsRead> {
  for (const visit of [...file.visits].reverse()) {
    for (const phase of ["asLeft", "asFound"] as const) {
      const readings = { ...phaseReadings(visit, "asFound"), ...phaseReadings(visit, phase) };
      if (Object.keys(phaseReadings(visit, phase)).length === 0) continue;
      const model = fromReadings(file, visit, readings, context);
      if (model.kind === "known") return model;
    }
  }
  return fromNameplate(file, context);
}

function fromReadings(
  file: UnitFile,
  visit: Visit,
  readings: PhaseReadings,
  context: Context,
): Outcome<UnitAsRead> {
  const set = standardReadings(readings, file);
  if (set.kind !== "known") return set;
  return mapOutcome(elementFrom(set.value, file, temperatureFormOf(file, context)), (element) => {
    const drop = filterDropKPa(readings, file);
    const flow = set.value.permeateLPerH!.value + set.value.drainLPerH!.value;
    const line = lineDropKPa(linesAsFound(file.unit).feedTubes, flow, readings, file);
    const dropKPa = drop.kind === "known" ? Math.max(0.5, drop.value.value - line) : CLEAN_FILTER.dropKPa;
    const feed = (["beforeFilterPressure", "afterFilterPressure"] as const)
      .map((slot) => amountOf(slot, readings, file))
      .find((one) => one.kind === "known");
    const standing = amountOf("staticPressure", readings, file);
    const base = physicsUnit(file, context, {
      element,
      restrictor: restrictorFrom(set.value, file),
      tank: chargedTank(file, readings),
    });
    return known({
      unit: {
        ...base,
        cartridges: [
          { id: "preFilters", dropKPa, atLPerH: drop.kind === "known" ? flow : CLEAN_FILTER.atLPerH },
        ],
      },
      conditions: {
        feedPressureKPaGauge: feed?.kind === "known" ? feed.value.value : USUAL.feedKPa,
        temperatureC: set.value.temperatureC!.value,
        feedMgPerL: set.value.feedMgPerL!.value,
        tankPressureKPaGauge: 0,
      },
      ...(standing.kind === "known" && { staticFeedKPaGauge: standing.value.value }),
      minimumKPaGauge: minimumOf(file),
      visit: visit.id,
    });
  });
}

function fromNameplate(file: UnitFile, context: Context): Outcome<UnitAsRead> {
  const plate = nameplateAsReadings(file);
  if (plate.kind !== "known") return plate;
  return mapOutcome(elementFrom(plate.value, file, temperatureFormOf(file, context)), (element) => {
    const restrictor = restrictorFrom(plate.value, file);
    const feedMgPerL = plate.value.feedMgPerL?.value;
    if (feedMgPerL === undefined) return missing("unit.testFeedMgPerL");
    return known({
      unit: physicsUnit(file, context, { element, restrictor, tank: chargedTank(file, {}) }),
      conditions: {
        feedPressureKPaGauge: USUAL.feedKPa,
        temperatureC: USUAL.temperatureC,
        feedMgPerL,
        tankPressureKPaGauge: 0,
      },
      minimumKPaGauge: minimumOf(file),
    });
  });
}

/** Behind a vented tank its pump makes the pressure. */
const minimumOf = (file: UnitFile): number => {
  if (file.unit.ventedTank) return 0;
  const minimum = applianceMinimumKPa(file);
  return minimum.kind === "known" ? minimum.value : 0;
};

function chargedTank(file: UnitFile, readings: PhaseReadings) {
  const charge = airChargeKPa(readings, file);
  const tank = tankOf(file, charge.kind === "known" ? charge.value.value : USUAL.chargeKPa);
  return tank.kind === "known" ? tank.value : undefined;
}

/** The element of the nameplate, as a new one would be. */
export const elementAsNew = (file: UnitFile, context: Context): Outcome<Element> =>
  mapOutcome(nameplateAsReadings(file), (plate) =>
    elementFrom(plate, file, temperatureFormOf(file, context)),
  );
