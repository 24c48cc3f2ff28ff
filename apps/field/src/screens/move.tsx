import { unitHistory } from "@tapside/book";
import type { Book, MoveWhy } from "@tapside/records";
import { useId, useState } from "react";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Form } from "../look/form.tsx";
import { Screen } from "../look/screen.tsx";
import type { Edit, LiveBook } from "../store/open-book.ts";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { setupWords } from "../words/setup.ts";
import { day } from "./day.ts";
import { Gone } from "./gone.tsx";
import { PickUnit } from "./pick-unit.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { storedSpecs } from "./specs/unit-specs.ts";

const placeName = (book: Book, point: string) => {
  const kept = book.point.get(point);
  if (!kept) return officeWords.inStore;
  return [book.site.get(kept.site ?? "")?.name, kept.name].filter(Boolean).join(", ");
};

/** A unit goes to another place, is swapped, lent, or taken to the store. Its history goes along; the place keeps its own. */
export function MoveScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const { book } = snapshot;
  const [, navigate] = useLocation();
  const [loan, setLoan] = useState(false);
  const [until, setUntil] = useState("");
  const untilId = useId();
  const unit = book.unit.get(id);
  if (!unit) return <Gone />;
  const here = book.point.has(unit.point ?? "") ? (unit.point ?? "") : "";
  const taken = new Set([...book.unit.values()].map((one) => one.point));
  const free = [...book.point.values()].filter((point) => !taken.has(point.id));
  const stored = [...book.unit.values()].filter((one) => !book.point.has(one.point ?? "") && one.id !== id);
  const done = (edits: readonly Edit[]) => {
    void live.writeAll(edits, "moved");
    navigate(`/unit/${id}`);
  };
  const loanUntil = loan && until ? { until } : {};
  const to = (point: string, why: MoveWhy) =>
    moveOf(live, id, here, point, why, why === "lent" ? loanUntil : {});
  return (
    <Screen
      title={officeWords.moveTitle}
      subtitle={[here ? placeName(book, here) : officeWords.inStoreAt(unit.storedAt ?? ""), unit.name].join(
        ", ",
      )}
      back={undoOrBack(live, `/unit/${id}`)}
      next={{ label: words.unit, hint: unit.name, to: `/unit/${id}` }}
    >
      {here ? null : <Form kind="unit" id={id} specs={storedSpecs} />}
      <button type="button" className="choice" aria-pressed={loan} onClick={() => setLoan(!loan)}>
        {officeWords.loan}
      </button>
      {loan ? (
        <div className="band entry">
          <label htmlFor={untilId}>{officeWords.lendHint}</label>
          <input id={untilId} type="date" value={until} onChange={(event) => setUntil(event.target.value)} />
        </div>
      ) : null}
      <Band tint>
        <strong>{officeWords.freePlaces}</strong>
      </Band>
      {free.length === 0 ? <p className="band note">{officeWords.noFreePlace}</p> : null}
      {free.map((point) => (
        <Band key={point.id} press={{ onPress: () => done(to(point.id, loan ? "lent" : "moved")) }}>
          <span className="note">{officeWords.moveUnit}</span> {placeName(book, point.id)}
        </Band>
      ))}
      {here ? (
        <>
          <Band tint>
            <strong>{officeWords.inStoreUnits}</strong>
          </Band>
          {stored.length === 0 ? <p className="band note">{officeWords.nothingInStore}</p> : null}
          {stored.map((other) => (
            <Band
              key={other.id}
              press={{
                onPress: () =>
                  done([
                    ...to("", "swapped"),
                    ...moveOf(live, other.id, "", here, loan ? "lent" : "swapped", loanUntil),
                  ]),
              }}
            >
              <span className="note">{officeWords.swapWith}</span>{" "}
              {[other.name, other.serial, other.storedAt].filter(Boolean).join(", ")}
            </Band>
          ))}
          <Band press={{ onPress: () => done(to("", "store")) }}>{officeWords.toStore}</Band>
        </>
      ) : null}
      <NewPlace onChoose={(site) => done(toNewPlace(live, id, here, site, loan, loanUntil))} />
      <Band tint>
        <strong>{officeWords.whereBeen}</strong>
      </Band>
      {unitHistory(book, id).map((span) => (
        <Band key={span.from + span.point}>
          <span className="row">
            <span>{placeName(book, span.point)}</span>
            <span className="note">
              {officeWords.why[span.why]}, {officeWords.sinceDay(day(span.from), day(span.until))}
            </span>
          </span>
        </Band>
      ))}
    </Screen>
  );
}

function NewPlace({ onChoose }: { onChoose: (site: string) => void }) {
  const { snapshot } = useBook();
  const id = useId();
  return (
    <div className="band entry">
      <label htmlFor={id}>{officeWords.newPlaceAt}</label>
      <select id={id} value="" onChange={(event) => event.target.value && onChoose(event.target.value)}>
        <option value="">{setupWords.choose}</option>
        {[...snapshot.book.site.values()].map((site) => (
          <option key={site.id} value={site.id}>
            {site.name}
          </option>
        ))}
      </select>
    </div>
  );
}

function moveOf(
  live: LiveBook,
  unit: string,
  from: string,
  to: string,
  why: MoveWhy,
  more: { readonly until?: string },
): readonly Edit[] {
  const ends = { ...(from && { from }), ...(to && { to }) };
  return [
    { kind: "unit", record: unit, fields: { point: to || null, storedAt: null } },
    { kind: "move", record: live.newId(), fields: { unit, ...ends, on: todayIso(), why, ...more } },
  ];
}

function toNewPlace(
  live: LiveBook,
  unit: string,
  from: string,
  site: string,
  loan: boolean,
  more: { readonly until?: string },
): readonly Edit[] {
  const point = live.newId();
  return [
    { kind: "point", record: point, fields: { site, name: officeWords.kitchen } },
    ...moveOf(live, unit, from, point, loan ? "lent" : "moved", loan ? more : {}),
  ];
}

/** A part goes into another unit: it ends here and begins there, with the same lot and serial number. */
export function MovePartScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const { book } = snapshot;
  const [, navigate] = useLocation();
  const part = book.part.get(id);
  if (!part) return <Gone />;
  const move = (unit: string) => {
    const { id: _, fittedVisit: __, unit: ___, meterAtFittingM3: ____, ...same } = part;
    const record = live.newId();
    void live.writeAll([
      { kind: "part", record: id, fields: { removedOn: todayIso() } },
      { kind: "part", record, fields: { ...same, unit, fittedOn: todayIso() } },
    ]);
    navigate(`/part/${record}`);
  };
  return (
    <Screen
      title={officeWords.movePartTitle}
      subtitle={part.role ? setupWords.part.roles[part.role] : ""}
      back={{ label: words.back, to: `/part/${id}` }}
      next={{ label: words.parts, to: `/part/${id}` }}
    >
      <PickUnit onPick={move} except={part.unit} />
    </Screen>
  );
}
