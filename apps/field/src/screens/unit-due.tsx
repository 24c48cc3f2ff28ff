import { dueList } from "@tapside/book";
import { unitFile, unitTitle } from "@tapside/records";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { DrawnDay } from "./drawn-day.tsx";
import { Gone } from "./gone.tsx";

/** What is due at one unit: parts by date or litres, whichever first, the end of a bypass, open points. */
export function UnitDueScreen({ id }: { id: string }) {
  const { snapshot } = useBook();
  const { book } = snapshot;
  const file = unitFile(book, id);
  const one = book.unit.get(id);
  if (!file || !one) return <Gone />;
  const today = todayIso();
  const row = dueList({ ...book, unit: new Map([[id, one]]) }, today)[0];
  const reasons = row?.reasons ?? [];
  return (
    <Screen
      title={words.partsDue}
      subtitle={unitTitle(file)}
      back={{ label: words.back, to: `/unit/${id}` }}
      next={{ label: words.unit, hint: file.unit.name, to: `/unit/${id}` }}
    >
      {reasons.length === 0 ? <p className="band">{words.noPartsDue}</p> : null}
      {reasons.map((reason, i) => (
        <Band
          key={`${reason.why} ${reason.part} ${i}`}
          {...(reason.part && { press: { to: `/part/${reason.part}` } })}
        >
          <span className="on-day">
            <span>
              <strong className="name">{messages.dueReason(reason)}</strong>
              {reason.on !== undefined && reason.on <= today ? (
                <span className="note">{words.now}</span>
              ) : null}
            </span>
            {reason.on === undefined ? <span /> : <DrawnDay iso={reason.on} today={today} />}
          </span>
        </Band>
      ))}
    </Screen>
  );
}
