import type {
  CauseId,
  CauseSize,
  CompanyCounts,
  Evidence,
  Meaning,
  Practice,
  Readings,
  RepairPlan,
  Scene,
  SetUpId,
  SignId,
  Step,
  TestId,
  TestProposal,
  Tool,
} from "@tapside/diagnosis";

/** What a screen asks of the worker. */
export type CauseAsked =
  | {
      readonly kind: "diagnose";
      readonly key: string;
      readonly scene: Scene;
      readonly readings: Readings;
      readonly setUps: readonly SetUpId[];
      readonly notAgain: readonly TestId[];
      readonly kitchenBusy: boolean;
      /** The company's own counts, if there are any. */
      readonly counts: CompanyCounts | undefined;
      /** Tools in the van; all when absent. */
      readonly tools: readonly Tool[] | undefined;
    }
  | { readonly kind: "planner"; readonly key: string; readonly practice: Practice };

/** Of each fitted cause: its size, and what it would read beside what was read. */
export type FittedSizes = Readonly<
  Partial<
    Record<
      CauseId,
      {
        readonly size: CauseSize | undefined;
        readonly beside: readonly {
          readonly sign: SignId;
          /** Absent: not read. */
          readonly read: number | undefined;
          readonly wouldRead: number;
        }[];
      }
    >
  >
>;

export interface Diagnosis {
  readonly causes: readonly {
    readonly cause: CauseId;
    readonly probability: number;
    readonly evidence: readonly Evidence[];
  }[];
  readonly two: number;
  readonly step: Step;
  readonly meanings: readonly Meaning[];
  readonly tests: readonly TestProposal[];
  readonly plan: RepairPlan;
}

/** What comes back: first the odds, a second later whether anything known explains the readings. */
export type CauseTold =
  | { readonly kind: "diagnosed"; readonly key: string; readonly diagnosis: Diagnosis }
  | { readonly kind: "fit"; readonly key: string; readonly unexplained: boolean; readonly sizes: FittedSizes }
  | { readonly kind: "planned"; readonly key: string; readonly run: Practice };
