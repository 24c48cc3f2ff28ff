import { checkOfDay } from "@tapside/book";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Form } from "../look/form.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { Gone } from "./gone.tsx";
import { MeterCheck } from "./meter-check.tsx";
import { Remove } from "./remove.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { instrumentSpecs } from "./specs/instrument-specs.ts";

/** The instruments in the van. Their accuracy is what every ± on the screen stands on. */
export function InstrumentsScreen() {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const add = () => {
    const id = live.newId();
    void live.write("instrument", id, { name: words.newInstrument, usual: true });
    navigate(`/instrument/${id}`);
  };
  const checkedToday = (id: string) => checkOfDay(snapshot.book, id, todayIso()) !== undefined;
  return (
    <Screen
      title={words.instruments}
      back={undoOrBack(live, "/more")}
      next={{ label: words.addInstrument, onPress: add }}
    >
      {[...snapshot.book.instrument.values()].map((one) => (
        <Band key={one.id} press={{ to: `/instrument/${one.id}` }}>
          <span className="row">
            <span className="name">{one.name}</span>
            <span className="note">
              {[one.unit, one.scale, checkedToday(one.id) && words.checkedToday].filter(Boolean).join(", ")}
            </span>
          </span>
        </Band>
      ))}
    </Screen>
  );
}

export function InstrumentScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const instrument = snapshot.book.instrument.get(id);
  if (!instrument) return <Gone />;
  return (
    <Screen
      title={instrument.name ?? words.instruments}
      back={undoOrBack(live, "/instruments")}
      next={{ label: words.instruments, to: "/instruments" }}
    >
      {instrument.kind === "tds" || instrument.kind === "pressure" ? (
        <MeterCheck instrument={instrument} />
      ) : null}
      {instrument.kind === "tds" ? (
        <Band press={{ to: `/instrument/${id}/ledger` }}>
          <span className="name">{officeWords.ledger}</span>
          <p className="note">{officeWords.ledgerHint}</p>
        </Band>
      ) : null}
      <Form kind="instrument" id={id} specs={instrumentSpecs(instrument.kind)} />
      <Remove kind="instrument" id={id} to="/instruments" />
    </Screen>
  );
}
