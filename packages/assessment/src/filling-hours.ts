import { known, mapOutcome, type Outcome, type Uncertain } from "@tapside/quantities";
import type { UnitFile } from "@tapside/records";
import { type Conditions, type FillingOptions, filling, type Unit } from "@tapside/reverse-osmosis";
import type { Context, Figure } from "./assessment.ts";
import {
  boosted,
  elementFrom,
  physicsUnit,
  standardReadings,
  tankOf,
  temperatureFormOf,
} from "./from-records.ts";
import { amountOf, type PhaseReadings } from "./internal/amounts.ts";
import { finite } from "./internal/finite.ts";
import { remember } from "./internal/remember.ts";
import { restrictorFrom } from "./restrictor-from.ts";
import { hasPermeatePump } from "./shut-off-ratio.ts";

export const FILLING_RELATIVE = 0.12;
/** With a permeate pump: its own numbers and where it is shut off are assumed. Judgement, no source. */
export const FILLING_WITH_PUMP_RELATIVE = 0.2;

export const fillingRelative = (file: UnitFile): number =>
  hasPermeatePump(file) ? FILLING_WITH_PUMP_RELATIVE : FILLING_RELATIVE;

const fill = remember(
  (asked: {
    readonly unit: Unit;
    readonly conditions: Omit<Conditions, "tankPressureKPaGauge">;
    readonly options: FillingOptions;
  }) => filling(asked.unit, asked.conditions, asked.options),
  50,
);

/** Hours to fill the tank from empty to shut-off with this element, charge, water and supply. u 12 %: shut-off ratio and feed wander; with a permeate pump 20 %. */
export function fillingHours(
  readings: PhaseReadings,
  charge: Outcome<Uncertain>,
  file: UnitFile,
  context: Context,
): Outcome<Figure> {
  const now = standardReadings(readings, file);
  if (now.kind !== "known") return now;
  if (charge.kind !== "known" && !file.unit.ventedTank) return charge;
  const tank = tankOf(file, charge.kind === "known" ? charge.value.value : 0);
  if (tank.kind !== "known") return tank;
  return mapOutcome(elementFrom(now.value, file, temperatureFormOf(file, context)), (element) => {
    // The pressure read at the element is behind filters, their line and booster already.
    const {
      booster: _,
      feedTubes: __,
      ...unit
    } = {
      ...physicsUnit(file, context, {
        element,
        restrictor: restrictorFrom(now.value, file),
        tank: tank.value,
      }),
      cartridges: [],
    };
    const standing = mapOutcome(amountOf("staticPressure", readings, file), (feed) =>
      known(boosted(feed, readings, file, now.value.drainLPerH!.value)),
    );
    const filled = fill({
      unit,
      conditions: {
        feedPressureKPaGauge: now.value.membranePressureKPaGauge!.value,
        temperatureC: now.value.temperatureC!.value,
        feedMgPerL: now.value.feedMgPerL!.value,
      },
      options: {
        segments: 6,
        ...(standing.kind === "known" && { staticFeedKPaGauge: standing.value.value }),
      },
    });
    return mapOutcome(filled, ({ hours }) =>
      finite(known({ value: hours, u: fillingRelative(file) * hours, unit: "h" })),
    );
  });
}
