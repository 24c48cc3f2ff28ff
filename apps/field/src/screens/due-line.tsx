import type { LineFacts } from "../store/first-list.ts";
import { DrawnDay } from "./drawn-day.tsx";
import { dayOfLine, sayLineBesideDay } from "./unit-line.ts";

interface DueLineProps {
  readonly line: { readonly title: string; readonly facts: LineFacts };
  /** ISO date. */
  readonly today: string;
  readonly also?: string;
}

/** A unit of the due list: the day somebody has to come by, drawn; where; why. */
export function DueLine({ line: { title, facts }, today, also }: DueLineProps) {
  const on = dayOfLine(facts);
  return (
    <span className="on-day">
      <span>
        <strong className="name">{title}</strong>
        <span className="note">{[sayLineBesideDay(facts), also].filter(Boolean).join(" · ")}</span>
      </span>
      {on === undefined ? <span /> : <DrawnDay iso={on} today={today} />}
    </span>
  );
}
