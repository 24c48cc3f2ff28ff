import type {
  CompanyCounts,
  Diagnosis,
  FittedCauses,
  Hour,
  Practice,
  Readings,
  Scene,
} from "@tapside/diagnosis";

/** What a screen asks of the worker. */
export type CauseAsked =
  | {
      readonly kind: "diagnose";
      readonly key: string;
      readonly scene: Scene;
      readonly readings: Readings;
      /** What makes a test cheap, dear or impossible here and now. */
      readonly hour?: Hour;
      /** The company's own counts, if there are any. */
      readonly counts?: CompanyCounts | undefined;
    }
  | { readonly kind: "planner"; readonly key: string; readonly practice: Practice };

/** What comes back: first the odds, a second later whether anything known explains the readings. */
export type CauseTold =
  | { readonly kind: "diagnosed"; readonly key: string; readonly diagnosis: Diagnosis }
  | {
      readonly kind: "fit";
      readonly key: string;
      readonly unexplained: boolean;
      readonly sizes: FittedCauses;
    }
  | { readonly kind: "planned"; readonly key: string; readonly run: Practice };
