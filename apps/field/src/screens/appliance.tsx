import { Band } from "../look/band.tsx";
import { Form } from "../look/form.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { Gone } from "./gone.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { applianceSpecs, limitSpecs } from "./specs.ts";

/** An appliance with the limits from its own label. Blank is a fair answer. */
export function ApplianceScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const appliance = snapshot.book.appliance.get(id);
  if (!appliance) return <Gone />;
  const limits = [...snapshot.book.limit.values()].filter((limit) => limit.appliance === id);
  const unit = [...snapshot.book.unit.values()].find((one) => one.point === appliance.point);
  const home = unit ? `/unit/${unit.id}/edit` : "/";
  const addLimit = () =>
    void live.write("limit", live.newId(), {
      appliance: id,
      quantity: "tds",
      unit: "ppm",
      scale: "442",
      source: "appliance label",
    });
  return (
    <Screen
      title={appliance.name ?? words.appliances}
      back={undoOrBack(live, home)}
      next={{ label: words.back, to: home }}
    >
      <Form kind="appliance" id={id} specs={applianceSpecs} />
      <Band tint>
        <strong>{words.limits}</strong>
      </Band>
      {limits.map((limit) => (
        <Form key={limit.id} kind="limit" id={limit.id} specs={limitSpecs} />
      ))}
      <Band press={{ onPress: addLimit }}>
        <strong>{words.addLimit}</strong>
      </Band>
    </Screen>
  );
}
