import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { Form } from "../look/form.tsx";
import { Screen } from "../look/screen.tsx";
import type { LiveBook } from "../store/open-book.ts";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { Gone } from "./gone.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { siteSpecs } from "./specs.ts";

/** A site: who to ask, its water, its units. */
export function SiteScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const site = snapshot.book.site.get(id);
  if (!site) return <Gone />;
  const points = [...snapshot.book.point.values()].filter((point) => point.site === id);
  const units = [...snapshot.book.unit.values()].filter((unit) =>
    points.some((point) => point.id === unit.point),
  );
  const addUnit = () => navigate(`/unit/${newUnit(live, id, units.length + 1)}/edit`);
  return (
    <Screen
      title={site.name ?? words.site}
      back={undoOrBack(live, "/")}
      middle={{ label: words.book, to: "/", picture: <span /> }}
      next={{ label: words.addUnit, onPress: addUnit }}
    >
      <Form kind="site" id={id} specs={siteSpecs} />
      {units.map((unit) => (
        <Band key={unit.id} tint press={{ to: `/unit/${unit.id}` }}>
          <span className="name">{unit.name}</span>
          <p className="note">{points.find((point) => point.id === unit.point)?.name}</p>
        </Band>
      ))}
    </Screen>
  );
}

/** A place with a unit and the usual chain, to be filled in. Returns the unit's id. */
function newUnit(live: LiveBook, site: string, number: number): string {
  const [point, unit] = [live.newId(), live.newId()];
  const part = (role: string, position: number) => ({
    kind: "part",
    record: live.newId(),
    fields: { unit, role, position },
  });
  void live.writeAll([
    { kind: "point", record: point, fields: { site, name: "Kitchen" } },
    { kind: "unit", record: unit, fields: { point, name: `Unit ${number}` } },
    part("sediment", 1),
    part("carbon", 2),
    part("element", 3),
  ]);
  return unit;
}
