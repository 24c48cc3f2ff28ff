import type { UnitFile } from "@tapside/records";
import { LINES, lineAsFound, restrictorAsFound } from "@tapside/reverse-osmosis";
import { type ClaimWords, inSign, type Messages } from "@tapside/words";

type Unit = UnitFile["unit"];
type Three = (value: number) => string;

function restrictorSaid(unit: Unit, { restrictor: says }: ClaimWords, three: Three): string | undefined {
  const found = restrictorAsFound(unit);
  if (found.kind !== "known") return undefined;
  const { value } = found;
  switch (value.kind) {
    case "rated":
      return says.rated(three(value.ratedLPerH), three(value.ratedKPa));
    case "capillary":
      return says.capillary(three(value.boreMm), three(value.lengthM));
    case "orifice":
      return says.orifice(three(value.boreMm));
    case "measured":
      return says.measured(three(value.flowLPerH), three(value.dropKPa), value.law);
  }
}

const linesSaid = (unit: Unit, says: ClaimWords, three: Three): readonly string[] =>
  LINES.flatMap((line) => {
    const tube = lineAsFound(line, unit);
    if (tube.kind !== "known") return [];
    const usual = unit[`${line}TubeBoreMm`] === undefined;
    return [says.line(says.lines[line], three(tube.value.lengthM), three(tube.value.boreMm), usual)];
  });

/** What a unit is set up from, in one sentence; empty when nothing is written. */
export function plateSaid(unit: Unit, { claim: says, decimalSign }: Messages): string {
  const three = (value: number) => inSign(value.toPrecision(3), decimalSign);
  return [
    unit.ratedPermeateLPerH && says.permeate(three(unit.ratedPermeateLPerH)),
    unit.ratedRejectionPercent && says.rejection(unit.ratedRejectionPercent),
    unit.testPressureKPaGauge && says.atPressure(three(unit.testPressureKPaGauge)),
    unit.twoElements && says.twoElements(unit.elementArrangement),
    unit.boosterShutOffRiseKPa &&
      unit.boosterOpenFlowLPerH &&
      says.booster(three(unit.boosterShutOffRiseKPa), three(unit.boosterOpenFlowLPerH)),
    unit.blendValve && unit.blendPercent && says.blended(three(unit.blendPercent)),
    restrictorSaid(unit, says, three),
    ...linesSaid(unit, says, three),
    unit.permeatePump && !unit.ventedTank && says.permeatePump,
    unit.tankL && says.tank(three(unit.tankL), unit.twoTanks === true, unit.ventedTank === true),
  ]
    .filter(Boolean)
    .join(", ");
}
