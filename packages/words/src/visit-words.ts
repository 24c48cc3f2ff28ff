import type { Answers, OpenPoint, StepDone } from "@tapside/records";

export interface CheckWords {
  readonly title: string;
  readonly items: Readonly<Record<string, string>>;
}

/** What the kinds of visit and the procedures say, on the screen and in the record. */
export interface VisitWords {
  readonly checks: Readonly<Record<"complaint" | "premises" | "shown", CheckWords>>;
  /** Why nobody got to the unit, by its id. */
  readonly reasons: Readonly<Record<string, string>>;
  /** Steps of procedures, by their id. */
  readonly steps: Readonly<Record<string, { readonly title: string; readonly text?: string }>>;
  /** What is waited for, by its id. */
  readonly waits: Readonly<Record<string, string>>;
  readonly authorities: Readonly<Record<string, string>>;
  readonly titles: Readonly<Record<"thisVisit" | "stepByStep", string>>;
  readonly says: Readonly<Record<"baseline" | "surveyDone" | "labelGoverns" | "stripNotWritten", string>>;
  noAccess(reason: string, time: string, note: string): string;
  times(from: string, to: string, minutes: number | undefined): string;
  others(names: string): string;
  counter(name: string, value: number, unit: string, perDay: number | undefined, since: string): string;
  noLeakPhoto(reason: string): string;
  ticked(title: string, items: readonly string[]): string;
  notSo(title: string, items: readonly string[]): string;
  inWords(note: string): string;
  drips(answer: Answers["drips"]): string;
  acceptance(answer: Answers["acceptance"]): string;
  /** "50 mg/L × 11.4 L ÷ 52.5 g/L = 10.9 mL". */
  dose(targetMgPerL: number, litres: number, strengthGPerL: number, ml: number): string;
  step(title: string, done: StepDone): string;
  /** To whom what was advised, what they decided, by when. */
  advice(point: Partial<OpenPoint>): string;
  /** Since when water goes past the unit, and the most scale it can have left. */
  bypassSoFar(
    since: string,
    days: number,
    litresPerDay: number | undefined,
    scaleG: number | undefined,
  ): string;
}
