import type {
  CauseId,
  Evidence,
  Meaning,
  Practice,
  Readings,
  RepairPlan,
  Scene,
  SetUpId,
  Step,
  TestId,
  TestProposal,
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
    }
  | { readonly kind: "planner"; readonly key: string; readonly practice: Practice };

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
  | { readonly kind: "fit"; readonly key: string; readonly unexplained: boolean }
  | { readonly kind: "planned"; readonly key: string; readonly run: Practice };
