import { unitsFound, whereIs } from "@tapside/book";
import { useDeferredValue, useEffect, useMemo, useState } from "react";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { whenIdle } from "../when-idle.ts";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { setupWords } from "../words/setup.ts";
import { askedFor } from "./asked-for.ts";
import { day, weekdayOf } from "./day.ts";
import { dayCounts } from "./day-counts.ts";
import { LanguageSwitch } from "./language-switch.tsx";
import { sayLineBesideDay, type UnitLine } from "./unit-line.ts";
import { DayBand, NotExported, SearchBox, UnitsFound } from "./units-found.tsx";
import { useUnitLines } from "./use-unit-lines.ts";

interface BookScreenProps {
  readonly onDemo: () => void;
  readonly isDemo: boolean;
}

/** Every unit, the most urgent first; an empty book offers the two ways to begin. */
export function BookScreen({ onDemo, isDemo }: BookScreenProps) {
  const { live } = useBook();
  const [, navigate] = useLocation();
  const [query, setQuery] = useState(askedFor.take);
  const lines = useUnitLines();
  const asked = useDeferredValue(query);
  const found = useMemo(() => unitsFound(lines, asked), [lines, asked]);
  const addSite = () => {
    const id = live.newId();
    void live.write("site", id, { name: words.newSite });
    navigate(`/site/${id}`);
  };
  useEffect(() => readAhead(lines), [lines]);
  const bare = useSitesWithoutUnit();
  const first = found[0];
  const empty = lines.length === 0 && bare.length === 0;
  return (
    <Screen
      title={weekdayOf(new Date())}
      aside={words.units(lines.length)}
      back={{ label: words.more, to: "/more" }}
      {...(empty ? {} : { middle: { label: officeWords.scan, to: "/scan" } })}
      next={
        first
          ? { label: first.title, hint: sayLineBesideDay(first.facts), to: `/unit/${first.id}` }
          : { label: words.addSite, onPress: addSite }
      }
    >
      {live.clockAhead ? <Band tint>{words.clockAhead}</Band> : null}
      {live.unsent > 0 && !isDemo ? <NotExported count={live.unsent} /> : null}
      {empty ? (
        <>
          <Band>
            <p>{words.empty}</p>
          </Band>
          <Band press={{ to: "/list" }}>
            <span className="name">{officeWords.listIn}</span>
          </Band>
          {isDemo ? null : (
            <Band press={{ onPress: onDemo }}>
              <span className="name">{words.openDemo}</span>
              <p className="note">{words.demoHint}</p>
            </Band>
          )}
          <Band press={{ to: "/practice" }}>
            <span className="name">{words.practiceUnit}</span>
          </Band>
          <LanguageSwitch />
        </>
      ) : (
        <Today />
      )}
      {lines.length > 3 ? <SearchBox query={query} onChange={setQuery} /> : null}
      <Lots query={asked} />
      {lines.length > 0 ? <UnitsFound found={found} asked={asked} /> : null}
      {bare.map((site) => (
        <Band key={site.id} tint press={{ to: `/site/${site.id}` }}>
          <span className="name">{site.name}</span>
          <p className="note">{words.addUnit}</p>
        </Band>
      ))}
      {empty ? null : (
        <Band press={{ onPress: addSite }}>
          <strong>{words.addSite}</strong>
        </Band>
      )}
    </Screen>
  );
}

const READ_AHEAD = 25;

/** The texts the search looks into are made while the list is looked at, a few at a time, before the first letter is typed. */
function readAhead(lines: readonly UnitLine[], from = 0): () => void {
  let stop = () => {};
  if (from < lines.length)
    stop = whenIdle(() => {
      for (const line of lines.slice(from, from + READ_AHEAD)) line.text;
      stop = readAhead(lines, from + READ_AHEAD);
    });
  return () => stop();
}

function useSitesWithoutUnit() {
  const { site, point, unit } = useBook().snapshot.book;
  return useMemo(() => {
    const used = new Set([...unit.values()].map((one) => point.get(one.point ?? "")?.site));
    return [...site.values()].filter((one) => !used.has(one.id));
  }, [site, point, unit]);
}

/** The way to the day: how many visits are planned and how many parts to load. */
function Today() {
  const { snapshot } = useBook();
  return <DayBand {...dayCounts(snapshot.book, useUnitLines(), todayIso())} />;
}

/** "Where is lot X?": parts by lot or serial number, those in service first. */
function Lots({ query }: { query: string }) {
  const { snapshot } = useBook();
  const { part, unit } = snapshot.book;
  const hits = useMemo(
    () => (query.trim().length < 3 ? [] : whereIs({ ...snapshot.book, part }, query).slice(0, 60)),
    [snapshot.book, part, query],
  );
  if (hits.length === 0) return null;
  return (
    <>
      <Band tint>
        <strong>{officeWords.lots}</strong>
      </Band>
      {hits.map((hit) => (
        <Band key={hit.part.id} press={{ to: `/part/${hit.part.id}` }}>
          <span className="row">
            <span>
              {hit.part.role ? setupWords.part.roles[hit.part.role] : words.parts}, {unit.get(hit.unit)?.name}
            </span>
            <span className="note">
              {hit.inService ? officeWords.inService : officeWords.takenOut(day(hit.part.removedOn))}
            </span>
          </span>
          <p className="note">
            {[siteOf(snapshot.book, hit.unit), words.lotAnd(hit.part.lot ?? "", hit.part.serial ?? "")]
              .filter(Boolean)
              .join(", ")}
          </p>
        </Band>
      ))}
    </>
  );
}

const siteOf = (book: ReturnType<typeof useBook>["snapshot"]["book"], unit: string) =>
  book.site.get(book.point.get(book.unit.get(unit)?.point ?? "")?.site ?? "")?.name;
