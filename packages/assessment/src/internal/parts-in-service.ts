import {
  type Kept,
  type Part,
  type PartRole,
  type Phase,
  partsInService,
  type UnitFile,
} from "@tapside/records";
import { rememberWith } from "./remember-with.ts";

export type Visit = UnitFile["visits"][number];

/** True when this visit has put in a new part of the role, whether or not the part's own record exists yet. */
export const replacedHere = (visit: Visit, role: PartRole): boolean =>
  Object.entries(visit.work).some(
    ([task, work]) =>
      work.state === "done" && task.split(":")[0] === "replace" && task.split(":")[1] === role,
  );

/** Whether this visit has changed this part: the work names it, or names only the role and this is the first of its chain. */
export function changedHere(visit: Visit, part: Kept<Part>, parts: UnitFile["parts"]): boolean {
  const chain = part.role ? partsInService({ parts }, visit, "asFound", part.role) : [];
  return Object.entries(visit.work).some(([task, work]) => {
    const [verb, role, named = work.part] = task.split(":");
    if (work.state !== "done" || verb !== "replace" || role !== part.role) return false;
    return named ? named === part.id : chain[0]?.id === part.id;
  });
}

/** Which element the water went through: its part id, or one standing for the element first fitted. */
export const elementId = (file: UnitFile, visit: Visit, phase: Phase): string =>
  elementAmong(visit, file.parts, phase);

const elementAmong = rememberWith((visit: Visit, parts: UnitFile["parts"], phase: Phase): string => {
  const fitted = partsInService({ parts }, visit, phase, "element").at(-1);
  if (phase === "asLeft" && replacedHere(visit, "element") && fitted?.fittedVisit !== visit.id)
    return `new:${visit.id}`;
  return fitted?.id ?? "first";
});
