import { daysAfter } from "@tapside/book";
import { Fragment, useMemo } from "react";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { GrowingList } from "../look/growing-list.tsx";
import { Heading } from "../look/heading.tsx";
import type { LineFacts } from "../store/first-list.ts";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { DueLine } from "./due-line.tsx";
import { dayOfLine } from "./unit-line.ts";

interface LineShown {
  readonly id: string;
  readonly title: string;
  readonly facts: LineFacts;
  readonly fixed: boolean;
}

/** The units that were asked for, as far as they are looked at: what is open, late, near, later, each under its count. */
export function UnitsFound({ found, asked }: { found: readonly LineShown[]; asked: string }) {
  const today = todayIso();
  const groupOf = useMemo(() => groupBy(today), [today]);
  const counts = useMemo(() => {
    const groups = found.map(({ facts }) => groupOf(facts));
    return (group: Group) => groups.filter((one) => one === group).length;
  }, [found, groupOf]);
  return (
    <>
      {found.length === 0 && asked.trim() !== "" ? <p className="band">{words.nothingFound}</p> : null}
      <GrowingList key={asked} items={found} more={officeWords.moreUnits}>
        {(line, before) => {
          const group = groupOf(line.facts);
          const begins = before === undefined || groupOf(before.facts) !== group;
          return (
            <Fragment key={line.id}>
              {begins ? <Heading text={words.urgency[group]} count={counts(group)} /> : null}
              <Band press={{ to: `/unit/${line.id}` }} fixed={line.fixed}>
                <DueLine line={line} today={today} />
              </Band>
            </Fragment>
          );
        }}
      </GrowingList>
    </>
  );
}

type Group = keyof typeof words.urgency;

/** As the list is ordered: an open visit, a day that has come, one within a month, the others. */
const groupBy = (today: string) => {
  const near = daysAfter(today, 31);
  return (facts: LineFacts): Group => {
    if (facts.first?.why === "visitOpen") return "open";
    const on = dayOfLine(facts);
    if (on === undefined) return "noDay";
    return on <= today ? "late" : on <= near ? "soon" : "later";
  };
};

interface SearchProps {
  readonly query: string;
  readonly onChange: (query: string) => void;
}

export const SearchBox = ({ query, onChange }: SearchProps) => (
  <label className="band entry">
    <span>{words.search}</span>
    <input type="search" value={query} onChange={(event) => onChange(event.target.value)} />
  </label>
);

export const NotExported = ({ count }: { count: number }) => (
  <Band tint press={{ to: "/more" }}>
    <span className="row">
      <span>{words.notExported(count)}</span>
      <span className="note">{words.export}</span>
    </span>
  </Band>
);

interface DayBandProps {
  readonly today: string;
  readonly planned: number;
  readonly parts: number;
}

export const DayBand = ({ today, planned, parts }: DayBandProps) => (
  <Band tint press={{ to: `/day/${today}` }}>
    <strong>{officeWords.today(planned, parts)}</strong>
  </Band>
);
