import { useEffect, useState } from "react";
import type { OpenVisit } from "./use-visit.ts";
import { visitWords as words } from "./words.ts";

/** A kept photo, as large as its room. */
export function PhotoView({ open, hash, alt }: { open: OpenVisit; hash: string; alt: string }) {
  const [url, setUrl] = useState<string>();
  useEffect(() => {
    let made: string | undefined;
    let gone = false;
    void open.live.getPhoto(hash).then((photo) => {
      if (!photo || gone) return;
      made = URL.createObjectURL(new Blob([new Uint8Array(photo.bytes)], { type: photo.mime }));
      setUrl(made);
    });
    return () => {
      gone = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [open.live, hash]);
  return url ? (
    <img className="photo-view" src={url} alt={alt} />
  ) : (
    <p className="photo-view note">{words.photoKept}</p>
  );
}
