import type { Practice, PracticeEntry } from "@tapside/diagnosis";
import { causeWords, practiceWords as words } from "../cause/words.ts";

/** One step of a run in words: what was done, and what it cost and showed. */
export function entryText(entry: PracticeEntry): { readonly what: string; readonly rest: string } {
  const minutes = causeWords.minutes(entry.minutes);
  if (entry.kind === "repair")
    return {
      what: causeWords.putRightOf(causeWords.causes[entry.cause]),
      rest: `, ${minutes}: ${entry.helped ? words.helped : words.notHelped}`,
    };
  const shown = Object.entries(entry.shown).map(([sign, value]) =>
    causeWords.signText(sign as keyof typeof entry.shown, value as number),
  );
  return { what: causeWords.tests[entry.test], rest: `, ${minutes}: ${shown.join(", ")}` };
}

interface Told {
  readonly who: string;
  readonly day: string;
  readonly start: Practice;
  readonly end: Practice;
  readonly planned: Practice;
}

/** A whole practice as a text: what it was, what was done, and what the planner would have done. */
export function practiceText({ who, day, start, end, planned }: Told): string {
  const causes = start.causes.map(
    (cause) =>
      `${causeWords.causes[cause]}: ${end.causes.includes(cause) ? words.stillThere : words.putRight}`,
  );
  return [
    `${words.title}: ${who}, ${day}`,
    words.simulated,
    ...causes,
    ...runText(who, end),
    ...runText(words.planner, planned),
  ].join("\n");
}

const runText = (who: string, run: Practice): readonly string[] => [
  `${who}, ${causeWords.minutes(run.minutes)}`,
  ...(run.log.length === 0 ? [words.didNothing] : []),
  ...run.log.map((entry) => {
    const { what, rest } = entryText(entry);
    return `  ${what}${rest}`;
  }),
];
