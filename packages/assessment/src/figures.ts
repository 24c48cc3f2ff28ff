import { converted, known, mapOutcome, missing, type Outcome, type Uncertain } from "@tapside/quantities";
import type { Phase, UnitFile } from "@tapside/records";
import type { Context, Figure, Figures } from "./assessment.ts";
import { carbonLeft } from "./carbon-left.ts";
import { elementRatios } from "./element-ratios.ts";
import { elementReference } from "./element-reference.ts";
import { fillingHours } from "./filling-hours.ts";
import { temperatureFormOf } from "./from-records.ts";
import { amountOf } from "./internal/amounts.ts";
import { finite } from "./internal/finite.ts";
import type { Visit } from "./internal/parts-in-service.ts";
import { phaseReadings } from "./internal/phase-readings.ts";
import { airChargeKPa, bestChargeKPa, fullTankKPa, shutOffKPa, usableAt } from "./tank-figures.ts";
import { filterDropKPa, recoveryOf, reductionOf, solidsAsRead } from "./water-figures.ts";

/** A measured amount shown in a trade unit. */
function shown(outcome: Outcome<Uncertain>, from: string, to: string): Outcome<Figure> {
  return finite(
    mapOutcome(outcome, ({ value, u }) =>
      known({ value: converted(value, from, to), u: converted(u, from, to), unit: to }),
    ),
  );
}

export const pressureUnitOf = (context: Context) => context.settings.pressureUnit ?? "psi";

/** All figures of one phase of a visit. */
export function figuresOf(file: UnitFile, visit: Visit, phase: Phase, context: Context): Figures {
  const readings = phaseReadings(visit, phase);
  const form = temperatureFormOf(file, context);
  const pressure = (outcome: Outcome<Uncertain>) => shown(outcome, "kPa", pressureUnitOf(context));
  const ratios = elementRatios(readings, elementReference(file, visit, phase), file, form);
  const charge = airChargeKPa(readings, file);
  const full = fullTankKPa(readings, file, context);
  const best = mapOutcome(bestChargeKPa(file, full), (value) => known({ value, u: 0 }));
  const empty = Object.keys(readings).length === 0;
  return {
    percentReduction: reductionOf(readings, file),
    recovery: recoveryOf(readings, file),
    ...ratios,
    filterDrop: pressure(filterDropKPa(readings, file)),
    permeateFlow: shown(amountOf("permeateFlow", readings, file), "L/h", "L/min"),
    drainFlow: shown(amountOf("drainFlow", readings, file), "L/h", "L/min"),
    airCharge: pressure(charge),
    usableLitres: usableAt(charge, full, file),
    usableLitresAtBest: usableAt(best, full, file),
    bestCharge: pressure(best),
    shutOffPressure: pressure(shutOffKPa(readings, file, context)),
    fillingHours: fillingHours(
      readings,
      phase === "asLeft" && charge.kind !== "known" ? chargeAsFound(file, visit) : charge,
      file,
      context,
    ),
    deliveredTds: solidsAsRead("deliveredTds", readings, file),
    carbonLeft: empty && phase === "asLeft" ? missing("waterMeter") : carbonLeft(file, visit, phase),
  };
}

const chargeAsFound = (file: UnitFile, visit: Visit) => airChargeKPa(phaseReadings(visit, "asFound"), file);
