import type { Assumption } from "@tapside/assessment";
import type { Answers, ValveId } from "@tapside/records";

type State = "open" | "shut";

/** Every sentence of the printed record that is not about a judgement. */
export interface RecordWords {
  /** For dates and times, BCP 47. */
  readonly locale: string;
  readonly title: string;
  readonly head: readonly [asFound: string, asLeft: string, limit: string];
  readonly marks: Readonly<Record<"none" | "outside" | "notExpected" | "tooClose", string>>;
  readonly rows: Readonly<
    Record<
      | "drain"
      | "permeate"
      | "percentReduction"
      | "membraneFlow"
      | "saltPassage"
      | "airCharge"
      | "usableLitres",
      string
    >
  >;
  readonly titles: Readonly<
    Record<
      | "findings"
      | "questioned"
      | "causes"
      | "inspection"
      | "sampling"
      | "valves"
      | "fitted"
      | "decisions"
      | "open"
      | "due"
      | "standOn"
      | "readings"
      | "notRead"
      | "instruments"
      | "sources"
      | "assumed"
      | "life",
      string
    >
  >;
  readonly life: {
    readonly salt: string;
    readonly flow: string;
    readonly fresh: string;
    readonly today: string;
  };
  readonly says: Readonly<
    Record<
      | "notRead"
      | "noPort"
      | "photoOnly"
      | "forInformation"
      | "noLimit"
      | "thisUnitToday"
      | "allWithin"
      | "notConfirmed"
      | "found"
      | "mostLikely"
      | "bypassed"
      | "outsideFound"
      | "nothingChanged"
      | "nobodyPresent"
      | "technicianNotNamed"
      | "notWritten"
      | "asItShouldBe"
      | "signature"
      | "uncertainty"
      | "noScale"
      | "usualAccuracy"
      | "instrumentNotNamed"
      | "doubtful"
      | "timeAhead"
      | "changedSince"
      | "notTaken"
      | "notFitted"
      | "due"
      | "usedUp"
      | "fittingUnknown",
      string
    >
  >;
  /** What the search for a cause ended in; the name of the cause put into it. */
  readonly cause: Readonly<Record<"found" | "mostLikely" | "notConfirmed", (name: string) => string>>;
  atTheUnit(temperature: string): string;
  times(kind: string, from: string, to: string): string;
  revision(n: number): string;
  replaces(revision: number, shortMark: string): string;
  page(revision: number, page: number, of: number): string;
  shortMark(mark: string): string;
  wholeMark(mark: string): string;
  /** Words in signs the print lacks, as it writes them. */
  writtenOtherwise(words: string): string;
  limit(text: string): string;
  toDo(text: string): string;
  done(tasks: string): string;
  present(name: string, role: string): string;
  doesNotSign(name: string): string;
  technician(name: string): string;
  exception(item: string, state: string, note: string): string;
  tankState(state: Answers["tankState"]): string;
  valve(valve: ValveId, state: State, seal: string): string;
  /** The feed beside other units on the same water; whose they are is not said. */
  neighbours(
    said: "same" | "waterMoved" | "thisOne" | "cannotTell",
    count: number,
    low: string,
    high: string,
  ): string;
  copiesTo(names: string): string;
  appliancesFill(seen: boolean): string;
  lot(lot: string): string;
  bypass(answer: Answers["bypass"]): string;
  roOptional(answer: Answers["roOptional"]): string;
  filling(state: string, expectedHours: number | undefined): string;
  left(task: string, reason: string): string;
  notDone(task: string, why: string): string;
  earlier(point: string, owner: string, due: string): string;
  settled(point: string, how: string): string;
  keptOpen(reason: string): string;
  dueBy(role: string, date: string, litres: string): string;
  moreLitres(low: string, high: string): string;
  temperatureForm(form: string): string;
  scales(scales: string): string;
  cup(litres: number): string;
  scale(scale: string): string;
  nothingSeen(step: string): string;
  instrument(name: string, unit: string, scale: string, checked: string, afterVisit: boolean): string;
  /** One line for each origin. */
  assumptions(assumed: readonly Assumption[]): readonly string[];
}
