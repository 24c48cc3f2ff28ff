import { useLocation } from "wouter";
import { FoundBands } from "../found/found-bands.tsx";
import { Band } from "../look/band.tsx";
import { Form } from "../look/form.tsx";
import { Rows, Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { setupWords } from "../words/setup.ts";
import { day } from "./day.ts";
import { Gone } from "./gone.tsx";
import { Remove } from "./remove.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { pointSpecs } from "./specs/site-specs.ts";
import { unitSpecsOf } from "./specs/unit-specs.ts";

/** The unit as its plates and labels say it is: place, nameplate, tank, restrictor, chain, appliances. */
export function UnitEditScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const unit = snapshot.book.unit.get(id);
  if (!unit) return <Gone />;
  const parts = [...snapshot.book.part.values()].filter((part) => part.unit === id && !part.removedOn);
  const appliances = [...snapshot.book.appliance.values()].filter(
    (appliance) => appliance.point === unit.point,
  );
  const site = snapshot.book.point.get(unit.point ?? "")?.site ?? "";
  const add = (kind: "part" | "appliance", fields: Record<string, string | number>) => {
    const record = live.newId();
    void live.write(kind, record, fields);
    navigate(`/${kind}/${record}`);
  };
  return (
    <Screen
      title={words.place}
      subtitle={snapshot.book.site.get(site)?.name}
      back={undoOrBack(live, `/unit/${id}`)}
      middle={{ label: words.site, to: `/site/${site}`, picture: <Rows /> }}
      next={{ label: words.unit, hint: unit.name, to: `/unit/${id}` }}
    >
      {unit.point ? <Form kind="point" id={unit.point} specs={pointSpecs} /> : null}
      <Form kind="unit" id={id} specs={unitSpecsOf(unit)} />
      <FoundBands unit={unit} />
      <Band tint>
        <strong>{words.parts}</strong>
      </Band>
      {parts.map((part) => (
        <Band key={part.id} press={{ to: `/part/${part.id}` }}>
          <span className="row">
            <span className="name">{part.role ? setupWords.part.roles[part.role] : words.parts}</span>
            <span className="note">{day(part.fittedOn)}</span>
          </span>
        </Band>
      ))}
      <Band press={{ onPress: () => add("part", { unit: id, position: parts.length + 1 }) }}>
        <strong>{words.addPart}</strong>
      </Band>
      <Band tint>
        <strong>{words.appliances}</strong>
      </Band>
      {appliances.map((appliance) => (
        <Band key={appliance.id} press={{ to: `/appliance/${appliance.id}` }}>
          <span className="name">{appliance.name}</span>
        </Band>
      ))}
      <Band
        press={{
          onPress: () =>
            add("appliance", {
              site,
              point: unit.point ?? "",
              name: setupWords.applianceTypes.combiOven,
              type: "combiOven",
            }),
        }}
      >
        <strong>{words.addAppliance}</strong>
      </Band>
      <Remove kind="unit" id={id} to="/" />
    </Screen>
  );
}
