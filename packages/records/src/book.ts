import type {
  Answers,
  Exception,
  KindId,
  Kinds,
  Phase,
  PhotoNote,
  Reading,
  SlotId,
  StepDone,
  Timer,
  Work,
} from "./kinds.ts";

/** A record with its id, as folded from its changes. Fields may be absent at any time. */
export type Kept<T> = Partial<T> & { readonly id: string };

/** A visit with its readings, answers, exceptions, work and photos unpacked from its fields. */
export interface KeptVisit extends Kept<Kinds["visit"]> {
  readonly readings: Readonly<Record<Phase, Readonly<Partial<Record<SlotId, Reading>>>>>;
  readonly answers: Readonly<Partial<Answers>>;
  readonly exceptions: Readonly<Record<string, Exception>>;
  readonly work: Readonly<Record<string, Work>>;
  readonly photos: Readonly<Record<string, PhotoNote>>;
  /** Steps of procedures as done, by `<task>:<step>`; absent when none was. */
  readonly steps?: Readonly<Record<string, StepDone>>;
  /** Waiting started in this visit; absent when there was none. */
  readonly timers?: Readonly<Record<string, Timer>>;
  /** Slots passed over on purpose in this visit: field `skip:<phase>:<slot>` true. */
  readonly skipped: readonly string[];
}

/** Everything in the book, by kind and id, without retracted records. */
export type Book = {
  readonly [K in Exclude<KindId, "visit">]: ReadonlyMap<string, Kept<Kinds[K]>>;
} & { readonly visit: ReadonlyMap<string, KeptVisit> };

/** Everything that bears on one unit: the argument of an assessment. Visits oldest first. */
export interface UnitFile {
  readonly site: Kept<Kinds["site"]>;
  readonly point: Kept<Kinds["point"]>;
  readonly unit: Kept<Kinds["unit"]>;
  readonly appliances: readonly (Kept<Kinds["appliance"]> & {
    readonly limits: readonly Kept<Kinds["limit"]>[];
  })[];
  readonly parts: readonly Kept<Kinds["part"]>[];
  readonly instruments: ReadonlyMap<string, Kept<Kinds["instrument"]>>;
  readonly visits: readonly KeptVisit[];
  readonly openPoints: readonly Kept<Kinds["openPoint"]>[];
  /** Closed, or refused by a named person: they stay in the record. */
  readonly settledPoints: readonly Kept<Kinds["openPoint"]>[];
  /** Analyses of the site's feed water, oldest first. */
  readonly analyses?: readonly Kept<Kinds["waterAnalysis"]>[];
}
