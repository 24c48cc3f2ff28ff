import { unitsFound } from "@tapside/book";
import { useDeferredValue, useMemo, useState } from "react";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Screen } from "../look/screen.tsx";
import type { FirstList } from "../store/first-list.ts";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { askedFor } from "./asked-for.ts";
import { weekdayOf } from "./day.ts";
import { sayLineBesideDay } from "./unit-line.ts";
import { DayBand, NotExported, SearchBox, UnitsFound } from "./units-found.tsx";

/** The book's first screen while the book itself is still being read: what can be looked for and opened is there. */
export function BookAtOnce({ list, isDemo }: { list: FirstList; isDemo: boolean }) {
  const [query, setQuery] = useState("");
  const asked = useDeferredValue(query);
  const today = todayIso();
  const { lines } = list;
  const found = useMemo(() => unitsFound(lines, asked), [lines, asked]);
  const [first] = found;
  const type = (text: string) => {
    askedFor.keep(text);
    setQuery(text);
  };
  return (
    <Screen
      title={weekdayOf(new Date())}
      aside={words.units(lines.length)}
      back={{ label: words.more, to: "/more" }}
      middle={{ label: officeWords.scan, to: "/scan" }}
      {...(first && {
        next: { label: first.title, hint: sayLineBesideDay(first.facts), to: `/unit/${first.id}` },
      })}
    >
      {list.unsent > 0 && !isDemo ? <NotExported count={list.unsent} /> : null}
      {list.day === today ? (
        <DayBand today={today} planned={list.planned} parts={list.parts} />
      ) : (
        <Band tint press={{ to: `/day/${today}` }}>
          <strong>{words.opening}</strong>
        </Band>
      )}
      {lines.length > 3 ? <SearchBox query={query} onChange={type} /> : null}
      <UnitsFound found={found} asked={asked} />
    </Screen>
  );
}
