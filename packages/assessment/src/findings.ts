import { converted, known, mapOutcome } from "@tapside/quantities";
import { type Phase, type PortId, SLOTS, type SlotId, type UnitFile } from "@tapside/records";
import type { Context, Figure, Figures, Finding } from "./assessment.ts";
import { elementReference } from "./element-reference.ts";
import { pressureUnitOf } from "./figures.ts";
import { doubtfulSlots, furtherFindings } from "./further-findings.ts";
import { amountOf } from "./internal/amounts.ts";
import { decimalsRead } from "./internal/decimals-read.ts";
import type { Visit } from "./internal/parts-in-service.ts";
import { phaseReadings } from "./internal/phase-readings.ts";
import { note, type Scene } from "./internal/scene.ts";
import { cannotTell, judge } from "./judge.ts";
import { rulesOf } from "./limits.ts";
import { supplyFindings } from "./supply-findings.ts";
import { applianceMinimumKPa, tankFound } from "./tank-figures.ts";
import { waterAsLeft, waterFindings } from "./water-findings.ts";

/** Everything judged at one phase, in no order yet. */
export function findingsOf(
  file: UnitFile,
  visit: Visit,
  phase: Phase,
  context: Context,
  figures: Figures,
): readonly Finding[] {
  const readings = phaseReadings(visit, phase);
  if (phase === "asLeft" && Object.keys(readings).length === 0) return [];
  const scene = { file, visit, phase, context, figures, readings };
  const asLeftToo = [
    ...element(scene),
    ...filters(scene),
    ...air(scene),
    ...carbonTest(scene),
    ...furtherFindings(scene),
  ];
  if (phase === "asLeft")
    return asLeftToo.filter((one) => one.verdict !== "cannotTell").concat(waterAsLeft(scene));
  const all = [
    ...bypass(scene),
    ...asLeftToo,
    ...waterFindings(scene),
    ...tank(scene),
    ...carbonLitres(scene),
    ...supplyFindings(scene),
  ];
  const doubtful: readonly string[] = doubtfulSlots(visit.readings[phase]);
  return all.map((one) => becauseNoPort(becauseDoubtful(one, doubtful), file));
}

/** What cannot be told for want of a place to read it says which place would have to be fitted. */
function becauseNoPort(one: Finding, { unit }: UnitFile): Finding {
  if (one.verdict !== "cannotTell") return one;
  const absent: readonly PortId[] = unit.portsAbsent ?? [];
  const ports = (one.missing ?? []).flatMap((id) => SLOTS[id as SlotId]?.port ?? []);
  const fit = [...new Set(ports)].filter((port) => absent.includes(port));
  return fit.length === 0 ? one : { ...one, detail: { ...one.detail, why: "noPort", fit: fit.join(" ") } };
}

/** A reading that is there but not trusted is called that, not missing. */
function becauseDoubtful(one: Finding, doubtful: readonly string[]): Finding {
  const among = (one.missing ?? []).filter((slot) => doubtful.includes(slot));
  return among.length === 0 ? one : { ...one, detail: { ...one.detail, doubtful: among.join(" ") } };
}

function bypass({ visit, phase }: Scene): Finding[] {
  if (visit.answers.inUse !== "bypassed") return [];
  const asked = visit.answers.bypass;
  const detail = asked
    ? {
        name: asked.name,
        role: asked.role,
        decision: asked.decision,
        ...(asked.until && { until: asked.until }),
      }
    : {};
  return [
    {
      id: "bypassed",
      phase,
      verdict: "information",
      consequence: 99,
      detail,
      ...(!asked?.until && { missing: ["bypass.until"] }),
    },
  ];
}

function element({ file, visit, phase, context, figures }: Scene): Finding[] {
  const rules = rulesOf(context);
  const reference = elementReference(file, visit, phase);
  const detail: Readonly<Record<string, string | number>> =
    reference.kind === "known"
      ? { reference: reference.value.from, provisional: reference.value.provisional ? "yes" : "no" }
      : {};
  const oxidised =
    figures.flowRatio.kind === "known" &&
    figures.saltRatio.kind === "known" &&
    figures.flowRatio.value.value > 1.1 &&
    figures.saltRatio.value.value > 1.5;
  const why: Finding["detail"] = oxidised ? { ...detail, pattern: "oxidised" } : detail;
  return [
    judge("saltPassage", phase, figures.saltRatio, rules.saltRatio, 90, {
      action: "replace:element",
      detail: why,
    }),
    judge("membraneFlow", phase, figures.flowRatio, rules.flowRatio, 80, {
      action: "replace:element",
      detail: why,
    }),
    judge("percentReduction", phase, figures.percentReduction, rules.percentReduction, 60),
    ...note("recovery", phase, figures.recovery),
  ];
}

function filters({ phase, context, figures }: Scene): Finding[] {
  return [
    judge("filterDrop", phase, figures.filterDrop, rulesOf(context).filterDrop, 65, {
      action: "replace:sediment",
    }),
  ];
}

function air(scene: Scene): Finding[] {
  const { file, phase, context, figures, readings } = scene;
  if (file.unit.ventedTank) return [];
  const unit = pressureUnitOf(context);
  const margin = converted(2, "psi", unit);
  const minimum = applianceMinimumKPa(file);
  const best = figures.bestCharge;
  const limit =
    best.kind === "known" && minimum.kind === "known"
      ? {
          low: Math.max(0, best.value.value - margin),
          high: best.value.value + margin,
          unit,
          source: "applianceLabel",
          detail: { minimum: converted(minimum.value, "kPa", unit), less: margin, set: best.value.value },
        }
      : rulesOf(context).airCharge;
  const found = tankFound(readings, file);
  if (found.kind === "known" && found.value.waterlogged)
    return [
      {
        id: "waterlogged",
        phase,
        verdict: "outside",
        figure: { value: found.value.gasAtFullL.value, u: found.value.gasAtFullL.u, unit: "L" },
        distance: 2,
        action: "replace:tank",
        consequence: 88,
      },
    ];
  return [
    judge("airCharge", phase, figures.airCharge, limit, 70, {
      action: "setAirCharge",
      detail: usableDetail(figures),
    }),
  ];
}

/** What the best charge gives is told where it gives more: it stands a little below the charge that gives most. */
function usableDetail(figures: Figures): Readonly<Record<string, number>> {
  const { usableLitres, usableLitresAtBest, bestCharge } = figures;
  const usable = usableLitres.kind === "known" ? usableLitres.value.value : undefined;
  const atBest = usableLitresAtBest.kind === "known" ? usableLitresAtBest.value.value : undefined;
  return {
    ...(bestCharge.kind === "known" && { set: bestCharge.value.value }),
    ...(usable !== undefined && { usable }),
    ...(atBest !== undefined && !(atBest <= (usable ?? 0)) && { usableAtBest: atBest }),
  };
}

function carbonTest({ readings, phase, file, context }: Scene): Finding[] {
  const amount = amountOf("chlorineAfter", readings, file);
  const limit = rulesOf(context).chlorineAfter;
  const figure = mapOutcome(amount, (value) =>
    known<Figure>({ ...value, unit: "mg/L", ...decimalsRead(readings.chlorineAfter, "mg/L") }),
  );
  const found = judge("chlorineAfterCarbon", phase, figure, limit, 95, { action: "replace:carbon" });
  const reading = readings.chlorineAfter;
  if (!reading?.notDetected || !(reading.value! <= limit.high) || found.verdict === "cannotTell")
    return [found];
  return [{ ...found, verdict: "within", distance: -1, rule: "not-detected", consequence: 9 }];
}

function tank({ figures, phase }: Scene): Finding[] {
  return [
    ...note("usableLitres", phase, figures.usableLitres, usableDetail(figures)),
    ...note("shutOffPressure", phase, figures.shutOffPressure),
    ...note("fillingHours", phase, figures.fillingHours),
  ];
}

function carbonLitres({ figures, phase }: Scene): Finding[] {
  const left = figures.carbonLeft;
  if (left.kind !== "known") return [cannotTell("carbonLeft", phase, left, 45)];
  const { lowM3, highM3, usedShare } = left.value as typeof left.value & { readonly usedShare?: number };
  const detail = { lowM3, highM3, ...(usedShare !== undefined && { usedShare }) };
  if (usedShare !== undefined && lowM3 + highM3 <= 0) return [overused(phase, usedShare, left.value, detail)];
  const figure = { value: (lowM3 + highM3) / 2, u: (highM3 - lowM3) / 4, unit: "m³" };
  return [
    judge("carbonLeft", phase, known(figure), { low: 0, unit: "m³", source: "carbonRating" }, 75, {
      action: "replace:carbon",
      detail,
    }),
  ];
}

/** Beyond its rating nothing is left; how far beyond is told as a multiple, never as less than nothing. */
function overused(
  phase: Phase,
  usedShare: number,
  { lowM3, highM3 }: { readonly lowM3: number; readonly highM3: number },
  detail: NonNullable<Finding["detail"]>,
): Finding {
  const span = usedShare > 1 ? (highM3 - lowM3) / Math.max(1e-9, -(lowM3 + highM3)) : 0;
  const figure = {
    value: usedShare,
    u: (Math.min(1, span) * (usedShare - 1)) / 4,
    unit: "× its rated litres",
  };
  return judge(
    "carbonLeft",
    phase,
    known(figure),
    { high: 1, unit: "× its rated litres", source: "carbonRating" },
    75,
    { action: "replace:carbon", detail },
  );
}
