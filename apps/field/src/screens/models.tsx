import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { Form } from "../look/form.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { Gone } from "./gone.tsx";
import { Limits } from "./limits.tsx";
import { Remove } from "./remove.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { modelSpecs } from "./specs/appliance-specs.ts";

/** Appliance types: their limits are set once, with source and date, and count for every appliance of the type. */
export function ModelsScreen() {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const add = () => {
    const id = live.newId();
    void live.write("model", id, { name: words.newModel });
    navigate(`/model/${id}`);
  };
  return (
    <Screen
      title={words.models}
      back={undoOrBack(live, "/more")}
      next={{ label: words.addModel, onPress: add }}
    >
      <Band>
        <p className="note">{words.modelsHint}</p>
      </Band>
      {[...snapshot.book.model.values()].map((one) => (
        <Band key={one.id} press={{ to: `/model/${one.id}` }}>
          <span className="row">
            <span className="name">{one.name}</span>
            <span className="note">{one.source}</span>
          </span>
        </Band>
      ))}
    </Screen>
  );
}

export function ModelScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const model = snapshot.book.model.get(id);
  if (!model) return <Gone />;
  return (
    <Screen
      title={model.name ?? words.models}
      back={undoOrBack(live, "/models")}
      next={{ label: words.models, to: "/models" }}
    >
      <Form kind="model" id={id} specs={modelSpecs} />
      <Limits owner={id} home={`/model/${id}`} />
      <Remove kind="model" id={id} to="/models" />
    </Screen>
  );
}
