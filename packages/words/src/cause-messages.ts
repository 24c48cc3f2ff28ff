import type {
  CauseId,
  CautionId,
  Complaint,
  Measure,
  Measured,
  PartId,
  SetUpId,
  SignId,
  SignKind,
  TestId,
  Tool,
} from "@tapside/diagnosis";
import type { DecimalSign } from "./messages.ts";

type UnitsOffered = readonly [readonly [string, number], ...(readonly [string, number])[]];

/** What has a name in finding a cause. */
interface CauseNames {
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
  readonly seen: string;
  readonly notSeen: string;
}

/** The phrases one language gives; numbers come written. */
export interface CausePhrases extends CauseNames {
  readonly decimalSign: DecimalSign;
  readonly measures: { readonly [M in Measure]: (value: string) => string };
  readonly grades: Readonly<Record<"unknown" | "mild" | "middling" | "severe", string>>;
  readonly under: string;
  readonly over: string;
  readonly asNaCl: string;
  readonly asCaCO3: string;
  readonly ofRight: string;
}

/** What is said while finding a cause, in one language. */
export interface CauseMessages extends CauseNames {
  readonly units: Readonly<Record<SignKind, UnitsOffered>>;
  /** Size of a cause with its 95 % interval, in what a technician would name; the numbers in coherent units. */
  measure(size: Measured): string;
  /** Of the sizes met, from 0 (mild) to 1 (severe). */
  grade(share: number, uShare: number): string;
  /** Minutes as a watch shows them. */
  minutes(value: number): string;
  /** Odds as a number: never certain. */
  percent(probability: number): string;
  /** A sign's value as it is read at the unit: pressures in psi, flows in L/min, looks as seen or not; two figures for what is only expected. */
  signText(sign: SignId, value: number, figures?: number): string;
}
