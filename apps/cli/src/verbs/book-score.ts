import { ownScore, scoreTotals, techniciansIn } from "@tapside/book";
import { countsInBook, saidAndFound } from "@tapside/diagnosis";
import { unitFile } from "@tapside/records";
import { causesInLanguage } from "@tapside/words/causes";
import type { CommandVerb } from "../command-verb.ts";
import { dayAsked } from "../day-option.ts";
import { wordsAsked } from "../language-option.ts";
import { runThrough } from "../run-through.ts";
import { bookWordsIn } from "../words/book-words.ts";
import { bookIn } from "./book-file.ts";

const EXAMPLE = "examples/larkmoor.tapside.json";

/** A year before today, ISO date. */
const yearAgo = (): string => {
  const day = new Date();
  day.setUTCFullYear(day.getUTCFullYear() - 1);
  return day.toISOString().slice(0, 10);
};

export const scoreVerb: CommandVerb = {
  summary:
    "what was told and what came of it since a day: bands and readings, causes said and found, elements, call-backs",
  ways: ["FILE [--on 2025-11-25] [--language en|es] [--json]"],
  examples: [{ args: ["score", EXAMPLE, "--on", "2026-06-01"], prints: "lay where they were told" }],
  async run({ plain, named }, io) {
    const words = wordsAsked(named["--language"], undefined, io);
    const since = words && dayAsked(named["--on"] ?? yearAgo(), words, io);
    const book = since && bookIn(plain[0], io, words);
    if (!words || !since || !book) return 2;
    const says = bookWordsIn(words.language).score;
    const files = [...book.unit.keys()].flatMap((id) => unitFile(book, id) ?? []);
    const visits = runThrough(ownScore({ files, settings: book.settings, since }));
    const ids = new Set(visits.map(({ id }) => id));
    const causes = (await saidAndFound(files, countsInBook(book.causeCounts))).filter((one) =>
      ids.has(one.visit),
    );
    const people = techniciansIn(visits).map((name) => ({ name, ...scoreTotals(visits, name) }));
    const totals = scoreTotals(visits);
    if (named["--json"]) {
      io.print(JSON.stringify({ since, totals, people, causes }));
      return 0;
    }
    io.print(says.told(totals.inside, totals.told));
    io.print(says.elements(totals.elements.keptAsGood, totals.elements.new, totals.elements.newThoughGood));
    io.print(says.callBacks(totals.callBacks, totals.visits));
    const { causes: names } = causesInLanguage(words.language);
    for (const one of causes) io.print(says.cause(names[one.found], one.place, names[one.saidFirst]));
    if (causes.length === 0) io.print(says.noCause);
    for (const one of people) io.print(says.person(one.name, one.visits, one.callBacks));
    return 0;
  },
};
