import { unitsFound } from "@tapside/book";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { GrowingList } from "../look/growing-list.tsx";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { SearchBox } from "./units-found.tsx";
import { useUnitLines } from "./use-unit-lines.ts";

interface PickUnitProps {
  readonly onPick: (unit: string) => void;
  /** The unit that cannot be meant. */
  readonly except?: string | undefined;
}

/** One unit of the book, found by name: sites in the order of the alphabet. */
export function PickUnit({ onPick, except }: PickUnitProps) {
  const [query, setQuery] = useState("");
  const lines = useUnitLines();
  const found = unitsFound(lines, query)
    .filter((line) => line.id !== except)
    .sort((a, b) => a.title.localeCompare(b.title));
  return (
    <>
      <SearchBox query={query} onChange={setQuery} />
      {found.length === 0 ? <p className="band">{words.nothingFound}</p> : null}
      <GrowingList key={query} items={found} more={officeWords.moreUnits}>
        {(line) => (
          <Band key={line.id} press={{ onPress: () => onPick(line.id) }}>
            <strong className="name">{line.title}</strong>
            <p className="note">{line.row.file.point.name}</p>
          </Band>
        )}
      </GrowingList>
    </>
  );
}
