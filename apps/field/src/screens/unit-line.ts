import type { Book, UnitFile } from "@tapside/records";
import { unitFile } from "@tapside/records";
import { bookWords as words } from "../words/book.ts";
import { day } from "./day.ts";

/** A unit in the list: its line, and how soon it wants somebody. */
export interface UnitLine {
  readonly id: string;
  readonly title: string;
  readonly line: string;
  /** Lower comes first. */
  readonly urgency: number;
  /** Cannot be moved: its line has an end date that has come. */
  readonly fixed: boolean;
  readonly search: string;
}

const MONTH_MS = 30.44 * 24 * 3600 * 1000;
const YEARLY = 12;

/** All units of the book, the most urgent first. */
export function unitLines(book: Book, nowMs: number): readonly UnitLine[] {
  const lines = [...book.unit.keys()].flatMap((id) => {
    const file = unitFile(book, id);
    return file ? [lineOf(file, nowMs)] : [];
  });
  return lines.sort((a, b) => a.urgency - b.urgency || a.title.localeCompare(b.title));
}

function lineOf(file: UnitFile, nowMs: number): UnitLine {
  const title = [file.site.name, file.unit.name].filter(Boolean).join(", ");
  const search = [title, file.point.name, file.unit.serial, file.site.code].join(" ").toLowerCase();
  return { id: file.unit.id, title, search, ...stateOf(file, nowMs) };
}

function stateOf(file: UnitFile, nowMs: number): Pick<UnitLine, "line" | "urgency" | "fixed"> {
  const open = file.visits.find((visit) => !visit.closed);
  if (open) return { line: words.visitOpen, urgency: -2, fixed: false };
  const until = bypassUntil(file);
  if (until !== undefined)
    return { line: words.bypassEnds(day(until)), urgency: Date.parse(until) < nowMs ? -1 : 0, fixed: true };
  const last = file.visits.at(-1);
  const next = nextDueMs(file);
  const points = file.openPoints.length > 0 ? ` · ${words.openPoints(file.openPoints.length)}` : "";
  if (next !== undefined && next < nowMs)
    return { line: words.overdue + points, urgency: 1 + next / 1e15, fixed: false };
  if (next !== undefined)
    return {
      line: words.dueOn(day(new Date(next).toISOString())) + points,
      urgency: 2 + next / 1e15,
      fixed: false,
    };
  return {
    line: (last ? words.lastVisit(day(last.startedAt)) : words.noVisit) + points,
    urgency: 2,
    fixed: false,
  };
}

function bypassUntil(file: UnitFile): string | undefined {
  const answer = file.visits.at(-1)?.answers.bypass;
  return answer?.decision === "keepBypassed" ? answer.until : undefined;
}

/** The earliest due date among the fitted cartridges and the element, by their interval in months. */
function nextDueMs(file: UnitFile): number | undefined {
  const dates = file.parts
    .filter((part) => !part.removedOn && part.fittedOn)
    .map(
      (part) =>
        Date.parse(part.fittedOn ?? "") +
        (part.intervalMonths ?? (part.role === "element" ? 2 * YEARLY : YEARLY)) * MONTH_MS,
    )
    .filter((ms) => !Number.isNaN(ms));
  return dates.length > 0 ? Math.min(...dates) : undefined;
}
