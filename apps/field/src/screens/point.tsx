import { pointHistory } from "@tapside/book";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { Form } from "../look/form.tsx";
import { pickPhoto } from "../look/pick-photo.ts";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { setupWords } from "../words/setup.ts";
import { day } from "./day.ts";
import { Gone } from "./gone.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { pointSpecs } from "./specs/site-specs.ts";
import { PhotoOf } from "./unit-photos.tsx";

/** Finding the box: where it hangs, its photo, key, hours, who to ask, valve and drain; and what ever hung there. */
export function PointScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const { book } = snapshot;
  const [, navigate] = useLocation();
  const point = book.point.get(id);
  if (!point) return <Gone />;
  const site = book.site.get(point.site ?? "");
  const unit = [...book.unit.values()].find((one) => one.point === id);
  const home = unit ? `/unit/${unit.id}` : "/";
  const visits = [...book.visit.values()]
    .filter((visit) => visit.point === id)
    .sort((a, b) => ((a.startedAt ?? "") < (b.startedAt ?? "") ? 1 : -1));
  const photograph = async () => {
    const bytes = await pickPhoto();
    if (bytes) await live.write("point", id, { photo: await live.putPhoto(bytes, "image/jpeg") });
  };
  const facts: readonly (readonly [string, string | undefined])[] = [
    [setupWords.site.askName, [site?.askName, site?.askRole, site?.askPhone].filter(Boolean).join(", ")],
    [setupWords.site.key, site?.key],
    [setupWords.site.hours, site?.hours],
    [setupWords.site.address, site?.address],
  ];
  return (
    <Screen
      title={[site?.name, point.name].filter(Boolean).join(", ")}
      subtitle={point.where}
      back={undoOrBack(live, home)}
      middle={{ label: words.findIt, onPress: () => void photograph() }}
      next={unit ? { label: words.unit, hint: unit.name, to: home } : { label: words.book, to: "/" }}
    >
      {point.photo ? (
        <Band>
          <PhotoOf hash={point.photo} alt={officeWords.showPhoto} />
        </Band>
      ) : (
        <Band press={{ onPress: () => void photograph() }}>{officeWords.takePhoto}</Band>
      )}
      {facts.map(([label, text]) => (
        <Band key={label} press={{ onPress: () => navigate(`/site/${site?.id}`) }}>
          <span className="row">
            <span className="note">{label}</span>
            <span>{text || officeWords.notWritten}</span>
          </span>
        </Band>
      ))}
      <Form kind="point" id={id} specs={pointSpecs} />
      <Band tint>
        <strong>{officeWords.unitsHere}</strong>
      </Band>
      {pointHistory(book, id).map((span) => (
        <Band key={span.unit + span.from} press={{ to: `/unit/${span.unit}` }}>
          <span className="row">
            <span>
              {[book.unit.get(span.unit)?.name, book.unit.get(span.unit)?.serial].filter(Boolean).join(", ")}
            </span>
            <span className="note">{officeWords.sinceDay(day(span.from), day(span.until))}</span>
          </span>
        </Band>
      ))}
      <Band tint>
        <strong>{officeWords.visitsHere}</strong>
      </Band>
      {visits.map((visit) => (
        <Band
          key={visit.id}
          press={{ to: visit.closed ? `/visit/${visit.id}/record` : `/visit/${visit.id}` }}
        >
          <span className="row">
            <span>{day(visit.startedAt)}</span>
            <span className="note">{book.unit.get(visit.unit ?? "")?.name}</span>
          </span>
        </Band>
      ))}
    </Screen>
  );
}
