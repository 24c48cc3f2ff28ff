import type { RefusedRow } from "@tapside/book";
import { Band } from "../look/band.tsx";
import { GrowingList } from "../look/growing-list.tsx";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";

/** The rows of a file that were not taken in, each with its reason; nothing where all were. */
export function RefusedRows({ rows }: { rows: readonly RefusedRow[] }) {
  if (rows.length === 0) return null;
  return (
    <>
      <Band tint>
        <strong>{officeWords.refusedRows(rows.length)}</strong>
      </Band>
      <GrowingList items={rows} more={officeWords.moreUnits}>
        {(row) => (
          <p key={`${row.line} ${row.code} ${JSON.stringify(row.detail)}`} className="band">
            {officeWords.refusedRow(row.line, messages.refusal(row))}
          </p>
        )}
      </GrowingList>
    </>
  );
}
