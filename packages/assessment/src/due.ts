import { type Kept, type Part, type PartRole, partsInService, type UnitFile } from "@tapside/records";
import type { DueItem } from "./assessment.ts";
import { carbonLeft, carbonUsedM3 } from "./carbon-left.ts";
import { hoursLeft } from "./hours-left.ts";
import { changedHere, type Visit } from "./internal/parts-in-service.ts";

/** Months between changes when the part's record names none. Pre-filters 12, membrane 24: common practice, no source. */
export const USUAL_MONTHS: Readonly<Partial<Record<PartRole, number>>> = {
  sediment: 12,
  carbon: 12,
  scaleInhibitor: 12,
  postCarbon: 12,
  remineraliser: 12,
  uvLamp: 12,
  element: 24,
};

/** A softener has no usual months: it is due where its record names months or hours. */
const ROLES = [...(Object.keys(USUAL_MONTHS) as PartRole[]), "softener"] as const;
/** A part is changed at a visit when 90 % of its rated litres or hours have passed: office rule. */
const USED_SHARE = 0.9;

/** What is due and when, by date, litres or hours, whichever first. A part changed in this visit counts as the new one. */
export function dueItems(file: UnitFile, visit: Visit, asOf: string): readonly DueItem[] {
  return ROLES.flatMap((role) =>
    partsInService(file, visit, "asFound", role)
      .filter(isEverDue)
      .map((part) => dueItem(file, visit, part, role, asOf)),
  );
}

const isEverDue = (part: Kept<Part>): boolean =>
  part.role !== "softener" ||
  [part.intervalMonths, part.ratedLitres, part.ratedHours].some((one) => one! > 0);

function dueItem(file: UnitFile, visit: Visit, part: Kept<Part>, role: PartRole, asOf: string): DueItem {
  const months = part.intervalMonths ?? USUAL_MONTHS[role];
  const today = day(visit.startedAt ?? asOf) || day(asOf);
  const changed = changedHere(visit, part, file.parts);
  const since = changed ? today : part.fittedOn;
  const byDate = since && months !== undefined ? monthsLater(since, months) : null;
  const litres = changed ? ofNewPart(file, visit, part, role) : litresLeft(file, visit, part, role);
  const byLitres = litres !== undefined && litres.low <= (1 - USED_SHARE) * (part.ratedLitres ?? 0);
  const hours = changed ? part.ratedHours : hoursLeft(file, visit, part);
  const byHours = hours !== undefined && hours <= (1 - USED_SHARE) * (part.ratedHours ?? 0);
  return {
    part: part.id,
    role,
    byDate,
    ...(litres && { litresLeft: litres }),
    ...(hours !== undefined && { hoursLeft: hours }),
    overdue: !changed && ((byDate !== null && byDate <= today) || byLitres || byHours),
  };
}

/** A new part has its rating before it; carbon more than that where the chlorine seen is below what it is rated at. */
function ofNewPart(file: UnitFile, visit: Visit, { ratedLitres }: Kept<Part>, role: PartRole) {
  if (!(ratedLitres! > 0)) return undefined;
  const left = role === "carbon" ? carbonLeft(file, visit, "asLeft") : undefined;
  return left?.kind === "known"
    ? { low: 1000 * left.value.lowM3, high: 1000 * left.value.highM3 }
    : { low: ratedLitres!, high: ratedLitres! };
}

function litresLeft(file: UnitFile, visit: Visit, part: Kept<Part>, role: PartRole) {
  if (!(part.ratedLitres! > 0)) return undefined;
  if (role === "carbon" && partsInService(file, visit, "asFound", "carbon")[0]?.id === part.id) {
    const left = carbonLeft(file, visit, "asFound");
    if (left.kind === "known") return { low: 1000 * left.value.lowM3, high: 1000 * left.value.highM3 };
  }
  const used = carbonUsedM3(file, visit, part);
  if (used.kind !== "known") return undefined;
  const left = part.ratedLitres! - 1000 * used.value;
  return { low: left, high: left };
}

const day = (iso: string): string => iso.slice(0, 10);

/** The same day some months later, or the last day of a shorter month. */
export function monthsLater(isoDate: string, months: number): string | null {
  const parts = /^(\d{4})-(\d{2})-(\d{2})/.exec(isoDate);
  if (!parts || !Number.isFinite(months)) return null;
  const index = Number(parts[1]) * 12 + Number(parts[2]) - 1 + Math.round(months);
  const [year, month] = [Math.floor(index / 12), (index % 12) + 1];
  const last = new Date(Date.UTC(year, month, 0)).getUTCDate();
  const two = (n: number) => String(n).padStart(2, "0");
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(Math.min(Number(parts[3]), last))}`;
}
