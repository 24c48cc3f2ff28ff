import { useState } from "react";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { unitLines } from "./unit-line.ts";

interface BookScreenProps {
  readonly onDemo: () => void;
  readonly isDemo: boolean;
}

/** Every unit, the most urgent first; an empty book offers the two ways to begin. */
export function BookScreen({ onDemo, isDemo }: BookScreenProps) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const [query, setQuery] = useState("");
  const lines = unitLines(snapshot.book, Date.now());
  const found = lines.filter((line) => line.search.includes(query.trim().toLowerCase()));
  const addSite = () => {
    const id = live.newId();
    void live.write("site", id, { name: words.newSite });
    navigate(`/site/${id}`);
  };
  const sitesWithoutUnit = [...snapshot.book.site.values()].filter(
    (site) => ![...snapshot.book.point.values()].some((point) => point.site === site.id),
  );
  const first = found[0];
  const today = new Date().toLocaleDateString("en-GB", { weekday: "long", day: "numeric", month: "short" });
  return (
    <Screen
      title={today}
      aside={words.units(lines.length)}
      back={{ label: words.more, to: "/more" }}
      middle={{ label: words.addSite, onPress: addSite, picture: <Plus /> }}
      next={
        first
          ? { label: first.title, hint: first.line, to: `/unit/${first.id}` }
          : { label: words.addSite, onPress: addSite }
      }
    >
      {live.storage === "refused" ? (
        <Band heavy press={{ to: "/more" }}>
          <strong>{words.storageRefused}</strong>
        </Band>
      ) : null}
      {live.clockAhead ? <Band tint>{words.clockAhead}</Band> : null}
      {live.unsent > 0 && !isDemo ? (
        <Band tint press={{ to: "/more" }}>
          <span className="row">
            <span>{words.notExported(live.unsent)}</span>
            <span className="note">{words.export}</span>
          </span>
        </Band>
      ) : null}
      {lines.length === 0 && sitesWithoutUnit.length === 0 ? (
        <>
          <Band>
            <p>{words.empty}</p>
          </Band>
          <Band press={{ onPress: addSite }}>
            <span className="name">{words.addSite}</span>
          </Band>
          {isDemo ? null : (
            <Band press={{ onPress: onDemo }}>
              <span className="name">{words.openDemo}</span>
              <p className="note">{words.demoHint}</p>
            </Band>
          )}
        </>
      ) : null}
      {lines.length > 8 ? (
        <label className="band entry">
          <span>{words.search}</span>
          <input type="search" value={query} onChange={(event) => setQuery(event.target.value)} />
        </label>
      ) : null}
      {lines.length > 0 && found.length === 0 ? <p className="band">{words.nothingFound}</p> : null}
      {found.map((line) => (
        <Band key={line.id} press={{ to: `/unit/${line.id}` }}>
          <span className="name">
            <strong>{line.title}</strong>
          </span>
          <p className="note">{line.line}</p>
        </Band>
      ))}
      {sitesWithoutUnit.map((site) => (
        <Band key={site.id} tint press={{ to: `/site/${site.id}` }}>
          <span className="name">{site.name}</span>
          <p className="note">{words.addUnit}</p>
        </Band>
      ))}
    </Screen>
  );
}

const Plus = () => (
  <svg viewBox="0 0 54 40" fill="none" stroke="currentColor" strokeWidth="7" aria-hidden="true">
    <path d="M27 4V36M9 20H45" />
  </svg>
);
