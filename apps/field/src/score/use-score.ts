import { ownScore, type VisitScore } from "@tapside/book";
import { countsInBook, type SaidAndFound, saidAndFound } from "@tapside/diagnosis";
import { unitFile } from "@tapside/records";
import { useEffect, useState } from "react";
import { inStretches, pauses } from "../store/pause.ts";
import { useBook } from "../store/use-book.ts";

interface Score {
  /** Undefined while they are being judged. */
  readonly visits: readonly VisitScore[] | undefined;
  readonly done: number;
  readonly causes: readonly SaidAndFound[];
}

/** Every visit since a day judged anew, a stretch at a time so that the screen goes on following the finger; then the causes confirmed in them. */
export function useScore(since: string): Score {
  const { snapshot } = useBook();
  const { book } = snapshot;
  const [score, setScore] = useState<Score>({ visits: undefined, done: 0, causes: [] });
  useEffect(() => {
    let wanted = true;
    const files = [...book.unit.keys()].flatMap((id) => unitFile(book, id) ?? []);
    const steps = ownScore({ files, settings: book.settings, since });
    const rest = pauses();
    let done = 0;
    const countAndRest = () => {
      done++;
      const resting = rest();
      if (resting) setScore((before) => ({ ...before, done }));
      return resting;
    };
    void inStretches(steps, countAndRest).then(async (visits) => {
      if (!wanted) return;
      setScore({ visits, done: visits.length, causes: [] });
      const causes = await saidAndFound(files, countsInBook(book.causeCounts));
      const ids = new Set(visits.map(({ id }) => id));
      if (wanted) setScore((before) => ({ ...before, causes: causes.filter(({ visit }) => ids.has(visit)) }));
    });
    return () => {
      wanted = false;
      steps.return(undefined as never);
    };
  }, [book, since]);
  return score;
}
