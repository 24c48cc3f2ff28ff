import type {
  CauseId,
  CautionId,
  Complaint,
  Measure,
  PartId,
  SetUpId,
  SignId,
  TestId,
  Tool,
} from "@tapside/diagnosis";

/** What is said while finding a cause, in one language. */
export interface CauseMessages {
  readonly causes: Readonly<Record<CauseId, string>>;
  readonly tests: Readonly<Record<TestId, string>>;
  /** Where hands go for a test. */
  readonly ports: Readonly<Record<TestId, string>>;
  readonly signs: Readonly<Record<SignId, string>>;
  readonly parts: Readonly<Record<PartId, string>>;
  readonly cautions: Readonly<Record<CautionId, string>>;
  readonly complaints: Readonly<Record<Complaint, string>>;
  readonly setUps: Readonly<Record<SetUpId, string>>;
  readonly tools: Readonly<Record<Tool, string>>;
  /** Size of a cause, in what a technician would name; the value in coherent units. */
  measure(measure: Measure, value: number): string;
  /** Of the sizes met, from 0 (mild) to 1 (severe). */
  grade(share: number, uShare: number): string;
  readonly seen: string;
  readonly notSeen: string;
  /** Minutes as a watch shows them. */
  minutes(value: number): string;
  /** Odds as a number: never certain. */
  percent(probability: number): string;
  /** A sign's value as it is read at the unit: pressures in psi, flows in L/min, looks as seen or not; two figures for what is only expected. */
  signText(sign: SignId, value: number, figures?: number): string;
}
