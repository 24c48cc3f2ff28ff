import { type LabelText, lotAndSerial } from "@tapside/book";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Form } from "../look/form.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { LabelReader } from "../visit/label-reader.tsx";
import { bookWords as words } from "../words/book.ts";
import { setupWords } from "../words/setup.ts";
import { Gone } from "./gone.tsx";
import { Remove } from "./remove.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { partSpecs } from "./specs/unit-specs.ts";

/** One part of the chain: when it was fitted, how far it lasts, its serial number and lot. */
export function PartScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const part = snapshot.book.part.get(id);
  if (!part) return <Gone />;
  const home = `/unit/${part.unit}/edit`;
  const keepLabel = (label: LabelText) => void live.write("part", id, { ...lotAndSerial(label, part) });
  const takeOut = () => {
    void live.write("part", id, { removedOn: todayIso() });
    navigate(home);
  };
  return (
    <Screen
      title={part.role ? setupWords.part.roles[part.role] : words.parts}
      back={undoOrBack(live, home)}
      next={{ label: words.back, to: home }}
    >
      <Form kind="part" id={id} specs={partSpecs(part.role)} />
      <LabelReader onRead={keepLabel} />
      {part.removedOn ? null : (
        <>
          <Band press={{ onPress: takeOut }}>
            {words.takenOutToday}
            <p className="note">{words.staysInHistory}</p>
          </Band>
          <Band press={{ to: `/part/${id}/move` }}>{words.movePart}</Band>
        </>
      )}
      <Remove kind="part" id={id} to={home} />
    </Screen>
  );
}
