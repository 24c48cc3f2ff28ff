import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { Form } from "../look/form.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { Gone } from "./gone.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { partSpecs } from "./specs.ts";

/** One part of the chain: when it was fitted, how far it lasts. */
export function PartScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const part = snapshot.book.part.get(id);
  if (!part) return <Gone />;
  const home = `/unit/${part.unit}/edit`;
  const remove = () => {
    void live.write("part", id, { removedOn: new Date().toISOString().slice(0, 10) });
    navigate(home);
  };
  return (
    <Screen title={words.parts} back={undoOrBack(live, home)} next={{ label: words.back, to: home }}>
      <Form kind="part" id={id} specs={partSpecs} />
      <Band tint press={{ onPress: remove }}>
        {words.remove}
      </Band>
    </Screen>
  );
}
