import type { WantedPart } from "@tapside/diagnosis";
import type { UnitFile } from "@tapside/records";
import { useEffect, useState } from "react";
import { Band } from "../look/band.tsx";
import { Heading } from "../look/heading.tsx";
import { type LiveBook, useBook } from "../store/use-book.ts";
import { whenIdle } from "../when-idle.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";

interface Line {
  readonly part: string;
  readonly percent: string;
}

/** What the stops of a day are likely to want beside what is due, by the odds of what their last visits read. */
export function LikelyParts({ files }: { files: readonly UnitFile[] }) {
  const { live } = useBook();
  const [lines, setLines] = useState<readonly Line[]>([]);
  const stops = files.map((file) => `${file.unit.id} ${file.visits.at(-1)?.id}`).join();
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked anew when the stops or their last visits are others
  useEffect(() => {
    let wanted = true;
    const stop = whenIdle(() => {
      void linesFor(files, live).then((found) => wanted && setLines(found));
    });
    return () => {
      wanted = false;
      stop();
    };
  }, [stops, live]);
  if (lines.length === 0) return null;
  return (
    <>
      <Heading text={officeWords.likely} />
      {lines.map(({ part, percent }) => (
        <Band key={part}>
          <span className="row">
            <span className="name capital">{part}</span>
            <span className="note">{officeWords.likelyOdds(percent)}</span>
          </span>
        </Band>
      ))}
    </>
  );
}

/** The search for causes is fetched only here: no first screen waits for it. */
async function linesFor(files: readonly UnitFile[], live: LiveBook): Promise<readonly Line[]> {
  const [{ countsInBook, partsForStops }, { causesInLanguage }] = await Promise.all([
    import("@tapside/diagnosis"),
    import("@tapside/words/causes"),
  ]);
  const { parts, percent } = causesInLanguage(messages.language);
  const wanted: readonly WantedPart[] = await partsForStops(
    files,
    countsInBook(live.snapshot().book.causeCounts),
  );
  return wanted.map((one) => ({ part: parts[one.part], percent: percent(one.probability) }));
}
