import { ownersOf } from "@tapside/book";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { Form } from "../look/form.tsx";
import { Rows, Screen } from "../look/screen.tsx";
import type { LiveBook } from "../store/open-book.ts";
import { useBook } from "../store/use-book.ts";
import { waterPageWords } from "../water/words.ts";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { day } from "./day.ts";
import { Gone } from "./gone.tsx";
import { Remove } from "./remove.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { siteSpecs } from "./specs/site-specs.ts";

/** A site: who to ask, its water, its owners, its units. */
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
      middle={{ label: words.book, to: "/", picture: <Rows /> }}
      next={{ label: words.addUnit, onPress: addUnit }}
    >
      <Form kind="site" id={id} specs={siteSpecs} />
      {site.chain ? (
        <Band press={{ to: `/chain/${encodeURIComponent(site.chain)}` }}>
          <span className="row">
            <span>{officeWords.chain}</span>
            <span className="note">{site.chain}</span>
          </span>
        </Band>
      ) : null}
      {ownersOf(snapshot.book, id).map((span) => (
        <Band key={span.since + span.owner} tint>
          <span className="row">
            <span>{span.owner}</span>
            <span className="note">{officeWords.sinceDay(day(span.since), day(span.until))}</span>
          </span>
        </Band>
      ))}
      <Band press={{ to: `/site/${id}/owner` }}>{officeWords.newOwner}</Band>
      <Band tint press={{ to: `/site/${id}/water` }}>
        <strong>{waterPageWords.open}</strong>
        <p className="note">{waterPageWords.openHint}</p>
      </Band>
      {units.map((unit) => (
        <Band key={unit.id} tint press={{ to: `/unit/${unit.id}` }}>
          <span className="name">{unit.name}</span>
          <p className="note">{points.find((point) => point.id === unit.point)?.name}</p>
        </Band>
      ))}
      <Remove kind="site" id={id} to="/" />
    </Screen>
  );
}

/**
 * A place with a unit and the usual chain, to be filled in. Its names are the technician's to change, so they are written in the
 * technician's language and stay as written. Returns the unit's id.
 */
export function newUnit(live: LiveBook, site: string, number: number): string {
  const [point, unit] = [live.newId(), live.newId()];
  const part = (role: string, position: number) => ({
    kind: "part",
    record: live.newId(),
    fields: { unit, role, position },
  });
  void live.writeAll([
    { kind: "point", record: point, fields: { site, name: words.firstPlace } },
    { kind: "unit", record: unit, fields: { point, name: words.unitNumber(number) } },
    part("sediment", 1),
    part("carbon", 2),
    part("element", 3),
  ]);
  return unit;
}
