import type { Assessment, Figure } from "@tapside/assessment";
import type { Outcome } from "@tapside/quantities";
import { type KeptVisit, type SlotId, staysBypassed, type UnitFile } from "@tapside/records";
import type { WaterLine } from "./block.ts";
import { rounded } from "./rounded.ts";

/** How thick and how deep the line of water is drawn: as read, where it was read; the picture's usual otherwise. */
export function waterLine(file: UnitFile, visit: KeptVisit, assessment: Assessment): WaterLine {
  const { asFound, asLeft } = assessment.figures;
  const permeateLPerMin = lPerMin(asLeft.permeateFlow) ?? lPerMin(asFound.permeateFlow) ?? 0.3;
  const drainLPerMin = lPerMin(asLeft.drainFlow) ?? lPerMin(asFound.drainFlow) ?? 3 * permeateLPerMin;
  const solids = (slot: SlotId) => visit.readings.asFound[slot]?.value ?? undefined;
  const feedMgPerL = solids("feedTds") ?? 250;
  const left = visit.answers.valvesAsLeft?.bypass;
  const flowing = !staysBypassed(visit);
  return rounded({
    permeateLPerMin,
    feedLPerMin: permeateLPerMin + drainLPerMin,
    feedMgPerL,
    permeateMgPerL: solids("permeateTds") ?? feedMgPerL / 20,
    flowing,
    bypass: file.point.bypassFitted ? (left ?? (flowing ? "shut" : "open")) : "none",
  }) as WaterLine;
}

const lPerMin = (figure: Outcome<Figure>): number | undefined =>
  figure.kind === "known" && figure.value.unit === "L/min" ? figure.value.value : undefined;
