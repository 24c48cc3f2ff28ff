import { ownersOf } from "@tapside/book";
import { useId, useState } from "react";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { day } from "./day.ts";
import { Gone } from "./gone.tsx";

/** A site changes hands on a day; whether the new owner may see what was before is said once. */
export function OwnerScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const [owner, setOwner] = useState("");
  const [since, setSince] = useState(todayIso());
  const [seesEarlier, setSeesEarlier] = useState(false);
  const [nameId, dayId] = [useId(), useId()];
  const site = snapshot.book.site.get(id);
  if (!site) return <Gone />;
  const keep = () => {
    if (owner.trim() === "") return document.getElementById(nameId)?.focus();
    void live.write("ownership", live.newId(), { site: id, owner: owner.trim(), since, seesEarlier });
    navigate(`/site/${id}`);
  };
  return (
    <Screen
      title={officeWords.newOwner}
      subtitle={site.name}
      back={{ label: words.back, to: `/site/${id}` }}
      next={{ label: officeWords.newOwner, hint: day(since), onPress: keep }}
    >
      <div className="band entry">
        <label htmlFor={nameId}>{officeWords.ownerName}</label>
        <input
          id={nameId}
          value={owner}
          autoComplete="off"
          onChange={(event) => setOwner(event.target.value)}
        />
      </div>
      <div className="band entry">
        <label htmlFor={dayId}>{officeWords.since}</label>
        <input
          id={dayId}
          type="date"
          value={since}
          onChange={(event) => setSince(event.target.value || todayIso())}
        />
        <p className="note">{officeWords.cutOff(day(since))}</p>
      </div>
      <button
        type="button"
        className="choice"
        aria-pressed={seesEarlier}
        onClick={() => setSeesEarlier(!seesEarlier)}
      >
        {officeWords.seesEarlier}
      </button>
      {ownersOf(snapshot.book, id).map((span) => (
        <Band key={span.since} tint>
          <span className="row">
            <span>{span.owner}</span>
            <span className="note">{officeWords.sinceDay(day(span.since), day(span.until))}</span>
          </span>
        </Band>
      ))}
    </Screen>
  );
}
