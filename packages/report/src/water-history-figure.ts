import { feedHistory } from "@tapside/assessment";
import { waterHistory } from "@tapside/pictures";
import type { KeptVisit, UnitFile } from "@tapside/records";
import { stepsInHistory } from "@tapside/water";
import type { Messages } from "@tapside/words";
import type { Block } from "./block.ts";

/** Fewer readings are no history. */
const LEAST = 3;

/** The feed up to and with a visit, steps marked, in words and drawn; nothing before there are three readings of it. */
export function waterHistoryFigure(
  file: UnitFile,
  visit: KeptVisit,
  words: Messages,
  timeZone: string,
): Block[] {
  const until = visit.startedAt ?? "";
  const history = feedHistory(
    file.visits.filter((one) => (one.startedAt ?? "") <= until),
    file,
  );
  if (history.length < LEAST) return [];
  const day = (iso: string) =>
    new Date(iso).toLocaleDateString(words.record.locale, {
      day: "numeric",
      month: "short",
      year: "numeric",
      timeZone,
    });
  const steps = stepsInHistory(history);
  const told = words.water.historyTold(
    history.length,
    steps.map((step) => ({ ...step, day: day(step.at) })),
  );
  const svg = waterHistory({
    theme: "paper",
    points: history.map(({ at, value, u }) => ({
      at: Date.parse(at),
      value,
      u,
      step: steps.some((step) => step.at === at),
    })),
    description: told,
    words: {
      first: day(history[0]!.at),
      last: day(history.at(-1)!.at),
      value: (value) => words.water.conductivity(value),
    },
  });
  return [
    { kind: "paragraph", text: `${words.water.history}: ${told}` },
    { kind: "figure", svg, alt: told, heightPt: 100 },
    { kind: "paragraph", quiet: true, text: words.water.stepRule },
  ];
}
