import { converted } from "@tapside/quantities";
import {
  atmosphericPressureKPa,
  type FaultId,
  faults,
  type Situation,
  simpleUnit,
} from "@tapside/reverse-osmosis";
import { BOOSTER } from "./build.ts";
import { supplyOn } from "./places.ts";
import { elementOf, PLATES, TEST } from "./plates.ts";
import type { Trouble } from "./troubles.ts";
import { mainOf, type UnitTruth } from "./unit-truth.ts";

/** What a unit is like on one day. */
export interface UnitState {
  /** The day its element came in. */
  readonly elementSince: string;
  /** Against the label. */
  readonly water: number;
  readonly salt: number;
  readonly filterFactor: number;
  readonly chargePsi: number;
  readonly meterM3: number;
  readonly troubles: readonly Trouble[];
}

const has = (id: string): id is FaultId => id in faults;

/** The unit and its water as the model takes them. */
export function situationOf(unit: UnitTruth, state: UnitState, day: string, temperatureC: number): Situation {
  const element = elementOf(unit.plate);
  const main = mainOf(unit);
  const supply = supplyOn(main, day);
  const plate = PLATES[unit.plate];
  const one = simpleUnit(
    {
      ...element,
      waterLPerM2HBar: element.waterLPerM2HBar * state.water,
      saltLPerM2H: element.saltLPerM2H * state.salt,
    },
    {
      ratedLPerH: plate.rejectLPerH * unit.restrictor * (unit.build === "twoElements" ? 2 : 1),
      ratedKPa: TEST.pressureKPaGauge,
    },
    { volumeL: unit.tankL, airChargeKPaGauge: converted(Math.max(0, state.chargePsi), "psi", "kPa") },
  );
  const sound: Situation = {
    unit: {
      ...one,
      ...(unit.build === "twoElements" && {
        elements: [...one.elements, ...one.elements],
        arrangement: "series",
      }),
      ...(unit.build === "twoTanks" && { tanks: [...one.tanks, ...one.tanks] }),
      ...(unit.build === "booster" && { booster: BOOSTER }),
      ...(unit.build === "vented" && { storage: "vented" }),
      cartridges: [{ id: "filters", dropKPa: unit.filterDropKPa, atLPerH: 80, clogging: state.filterFactor }],
      shutOff: { ratio: unit.shutOffRatio, hysteresis: 0.06 },
      atmosphericKPa: atmosphericPressureKPa(main.altitudeM),
    },
    conditions: {
      feedPressureKPaGauge: converted(unit.pressurePsi, "psi", "kPa"),
      temperatureC,
      feedMgPerL: supply.feedMgPerL,
      tankPressureKPaGauge: 0,
    },
  };
  return state.troubles.reduce(
    (situation, { id, size }) => (has(id) ? faults[id].apply(situation, size) : situation),
    sound,
  );
}
