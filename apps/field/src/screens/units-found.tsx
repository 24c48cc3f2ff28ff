import { Band } from "../look/band.tsx";
import { GrowingList } from "../look/growing-list.tsx";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";

interface LineShown {
  readonly id: string;
  readonly title: string;
  readonly line: string;
  readonly fixed: boolean;
}

/** The units that were asked for, as far as they are looked at. */
export function UnitsFound({ found, asked }: { found: readonly LineShown[]; asked: string }) {
  return (
    <>
      {found.length === 0 && asked.trim() !== "" ? <p className="band">{words.nothingFound}</p> : null}
      <GrowingList key={asked} items={found} more={officeWords.moreUnits}>
        {(line) => (
          <Band key={line.id} press={{ to: `/unit/${line.id}` }} fixed={line.fixed}>
            <span className="name">
              <strong>{line.title}</strong>
            </span>
            <p className="note">{line.line}</p>
          </Band>
        )}
      </GrowingList>
    </>
  );
}

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
