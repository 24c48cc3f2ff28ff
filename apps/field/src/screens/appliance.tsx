import { applianceUse } from "@tapside/book";
import { unitFile } from "@tapside/records";
import { Band } from "../look/band.tsx";
import { Form } from "../look/form.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { counterSaid } from "../visit/counter-said.ts";
import { bookWords as words } from "../words/book.ts";
import { Gone } from "./gone.tsx";
import { Limits } from "./limits.tsx";
import { Remove } from "./remove.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { applianceSpecs } from "./specs/appliance-specs.ts";

/** An appliance with the limits from its own label. Blank is a fair answer; its type may answer for it. */
export function ApplianceScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const appliance = snapshot.book.appliance.get(id);
  if (!appliance) return <Gone />;
  const unit = [...snapshot.book.unit.values()].find((one) => one.point === appliance.point);
  const home = unit ? `/unit/${unit.id}/edit` : "/";
  const file = unit && unitFile(snapshot.book, unit.id);
  const use = file && applianceUse(file).find((one) => one.appliance === id);
  const models = [...snapshot.book.model.values()].map((model) => [model.id, model.name ?? ""] as const);
  return (
    <Screen
      title={appliance.name ?? words.appliances}
      back={undoOrBack(live, home)}
      next={{ label: words.back, to: home }}
    >
      <Form kind="appliance" id={id} specs={applianceSpecs(models)} />
      {use ? (
        <Band tint>
          <p>{counterSaid(use)}</p>
        </Band>
      ) : null}
      <Limits owner={id} home={`/appliance/${id}`} />
      <Remove kind="appliance" id={id} to={home} />
    </Screen>
  );
}
