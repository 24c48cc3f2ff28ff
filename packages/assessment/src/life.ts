import type { UnitFile } from "@tapside/records";
import type { Context, LifePoint } from "./assessment.ts";
import { elementRatios } from "./element-ratios.ts";
import { elementReference } from "./element-reference.ts";
import { temperatureFormOf } from "./from-records.ts";
import { elementId, replacedHere, type Visit } from "./internal/parts-in-service.ts";
import { phaseReadings, visitsUpTo } from "./internal/phase-readings.ts";

/** The element's life strip: corrected flow and salt passage at every visit, with what happened there. */
export function lifeOf(file: UnitFile, visit: Visit, context: Context): readonly LifePoint[] {
  return visitsUpTo(file, visit).map((one) => lifePoint(file, one, context));
}

function lifePoint(file: UnitFile, visit: Visit, context: Context): LifePoint {
  const found = ratiosAt(file, visit, "asFound", context);
  const ratios = found.flowRatio.kind === "known" ? found : ratiosAt(file, visit, "asLeft", context);
  const uncertain = ({ value, u }: { readonly value: number; readonly u: number }) => ({ value, u });
  return {
    visit: visit.id,
    at: visit.startedAt ?? "",
    ...(ratios.flowRatio.kind === "known" && { flowRatio: uncertain(ratios.flowRatio.value) }),
    ...(ratios.saltRatio.kind === "known" && { saltRatio: uncertain(ratios.saltRatio.value) }),
    marks: marksOf(file, visit),
  };
}

/** A commissioning visit is its own "new": 1 by definition. */
function ratiosAt(file: UnitFile, visit: Visit, phase: "asFound" | "asLeft", context: Context) {
  const readings = phaseReadings(visit, phase);
  const ratios = elementRatios(
    readings,
    elementReference(file, visit, phase),
    file,
    temperatureFormOf(file, context),
  );
  if (
    visit.kind !== "commissioning" ||
    ratios.flowRatio.kind !== "known" ||
    ratios.saltRatio.kind !== "known"
  )
    return ratios;
  const one = <T extends { readonly kind: "known"; readonly value: { readonly unit: string } }>(
    ratio: T,
  ) => ({
    kind: "known" as const,
    value: { value: 1, u: 0, unit: ratio.value.unit },
  });
  return { flowRatio: one(ratios.flowRatio), saltRatio: one(ratios.saltRatio) };
}

function marksOf(file: UnitFile, visit: Visit): LifePoint["marks"] {
  const newElement = elementId(file, visit, "asFound") !== elementId(file, visit, "asLeft");
  const filters =
    replacedHere(visit, "sediment") ||
    replacedHere(visit, "carbon") ||
    file.parts.some(
      (part) => part.fittedVisit === visit.id && (part.role === "sediment" || part.role === "carbon"),
    );
  const commissioning = visit.kind === "commissioning";
  return [
    ...(commissioning ? (["new", "provisional"] as const) : []),
    ...(filters && !commissioning ? (["filters"] as const) : []),
    ...(newElement ? (["element"] as const) : []),
    ...(visit.answers.inUse === "bypassed" ? (["bypass"] as const) : []),
  ];
}
