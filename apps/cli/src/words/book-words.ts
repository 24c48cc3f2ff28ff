import type { feedAmongNeighbours, MeterLedger } from "@tapside/book";
import { type Language, languageOf } from "@tapside/words";
import { bookWordsEn } from "./book-words.en.ts";
import { bookWordsEs } from "./book-words.es.ts";

type FeedAmongNeighbours = Extract<ReturnType<typeof feedAmongNeighbours>, { kind: "known" }>["value"];

/** What the verbs of a book say themselves; sentences about a judgement come from the words of the phone. */
export interface BookWords {
  readonly nothingDue: string;
  carry(count: number, part: string): string;
  inVan(count: number, short: number): string;
  noMonth(typed: string): string;
  monthOf(month: string, sites: number, visits: number): string;
  readonly month: Readonly<Record<"visits" | "outside" | "parts" | "due" | "open", string>>;
  dueCount(overdue: number, soon: number): string;
  openCount(points: number, bypassed: number): string;
  vanLine(part: string, inVan: number, used: number, ordered: number, countAgain: boolean): string;
  dueSoon(count: number, part: string, short: number | undefined, toOrder: number | undefined): string;
  readonly vanNotCounted: string;
  likely(odds: string, part: string, stops: number): string;
  readonly noneLikely: string;
  readonly score: {
    told(inside: number, told: number): string;
    elements(keptAsGood: number, changed: number, changedThoughGood: number): string;
    callBacks(back: number, visits: number): string;
    cause(found: string, place: number, saidFirst: string): string;
    readonly noCause: string;
    person(name: string, visits: number, back: number): string;
  };
  noUnitOfSticker(code: string): string;
  /** Names, and how many more there are. */
  someOf(names: readonly string[], count: number): string;
  whichUnit(units: string): string;
  noSuchUnit(wanted: string, units: string): string;
  noDay(typed: string): string;
  readonly nameAFile: string;
  readonly nameAList: string;
  counted(newSites: number, newUnits: number, known: number): string;
  columnNotTaken(name: string): string;
  lineRefused(line: number, why: string): string;
  record(sound: boolean, mark: string, visit: string, revision: string, again: string): string;
  records(count: number, broken: number, otherwise: number): string;
  readonly noInputs: string;
  readonly judgedTheSame: string;
  judgedOtherwise(rulesNow: number, rulesThen: number | undefined, differs: string): string;
  missing(names: string, count: number): string;
  readonly noSuchVisit: string;
  readonly noCounts: string;
  mostLikely(unit: string): string;
  readonly speaksFor: string;
  readonly speaksAgainst: string;
  howLarge(sizes: string): string;
  readonly unexplained: string;
  nextTest(test: string, minutes: string): string;
  nextRepair(cause: string, sure: boolean): string;
  readonly nextNothing: string;
  notSeparable(causes: string): string;
  near(value: string, odds: string, cause: string): string;
  repair(cause: string, parts: string, minutes: string, first: string): string;
  readonly noPart: string;
  measureAgain(tests: string): string;
  readonly neighbours: Readonly<Record<FeedAmongNeighbours["said"], string>>;
  neighbour(on: string, title: string, own: string, others: string, said: string): string;
  readonly noNeighbours: string;
  readonly meters: Readonly<Record<MeterLedger["said"], string>>;
  meter(name: string, lines: number, said: string, off: string): string;
  readonly noMeters: string;
  readonly nameALog: string;
  /** A sensor's file: how many lines of which days, its lowest and highest by unit, its alarms. */
  sensor(count: number, from: string, until: string): string;
  span(low: string, high: string, unit: string): string;
  alarms(count: number): string;
  counter(on: string, title: string, value: string, unit: string): string;
  perDay(value: string, unit: string, since: string): string;
  readonly noCounters: string;
  kitchenWants(verb: string): string;
  readonly kitchenNoVisit: string;
}

const WORDS: Readonly<Record<Language, BookWords>> = { en: bookWordsEn, es: bookWordsEs };

export const bookWordsIn = (language: string | undefined): BookWords => WORDS[languageOf(language) ?? "en"];
