import { unitFile, unitTitle } from "@tapside/records";
import { useEffect, useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { day } from "./day.ts";
import { Gone } from "./gone.tsx";

/** How the unit was left: the photos of the newest visit that has any, those as left first. */
export function UnitPhotosScreen({ id }: { id: string }) {
  const { snapshot } = useBook();
  const file = unitFile(snapshot.book, id);
  if (!file) return <Gone />;
  const visit = file.visits.findLast((one) => Object.values(one.photos).some((photo) => photo.hash));
  const left = (wanted: string) => (/left|valves|leave/i.test(wanted) ? 0 : 1);
  const photos = Object.values(visit?.photos ?? {})
    .filter((photo) => photo.hash)
    .sort((a, b) => left(a.for) - left(b.for) || (a.at < b.at ? 1 : -1));
  return (
    <Screen
      title={words.asLeft}
      subtitle={unitTitle(file)}
      back={{ label: words.back, to: `/unit/${id}` }}
      next={{ label: words.unit, hint: file.unit.name, to: `/unit/${id}` }}
    >
      {photos.length === 0 ? <p className="band">{words.noPhoto}</p> : null}
      {photos.map((photo) => (
        <Band key={photo.hash}>
          <PhotoOf hash={photo.hash ?? ""} alt={words.photoOf(day(photo.at))} />
          <p className="note">{day(photo.at)}</p>
        </Band>
      ))}
    </Screen>
  );
}

/** A kept photo; nothing while it is being read, or when this phone does not have it. */
export function PhotoOf({ hash, alt }: { hash: string; alt: string }) {
  const { live } = useBook();
  const [url, setUrl] = useState("");
  useEffect(() => {
    let made = "";
    void live.getPhoto(hash).then((photo) => {
      if (!photo) return;
      made = URL.createObjectURL(new Blob([photo.bytes.slice()], { type: photo.mime }));
      setUrl(made);
    });
    return () => URL.revokeObjectURL(made);
  }, [live, hash]);
  return url ? <img className="photo" src={url} alt={alt} /> : null;
}
