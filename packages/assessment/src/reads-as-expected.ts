import type { KeptVisit, Phase } from "@tapside/records";
import type { Assessment, ExpectedId } from "./assessment.ts";

/** Whether a port reads where a sound unit would today; undefined where nothing was told or read, or not in one unit and scale. */
export function readsAsExpected(
  id: ExpectedId,
  phase: Phase,
  visit: KeptVisit,
  assessment: Assessment,
): boolean | undefined {
  const band = assessment.expected.kind === "known" ? assessment.expected.value[id] : undefined;
  const read = readAt(id, phase, visit, assessment);
  if (!band || read?.value == null || read.unit !== band.unit || read.scale !== band.scale) return undefined;
  return read.value >= band.low && read.value <= band.high;
}

/** Flows are read as seconds and litres: their figure is compared. */
function readAt(id: ExpectedId, phase: Phase, visit: KeptVisit, { figures }: Assessment) {
  if (id !== "permeateFlow" && id !== "drainFlow") return visit.readings[phase][id];
  const figure = figures[phase][id];
  return figure.kind === "known" ? { scale: undefined, ...figure.value } : undefined;
}
