import { type Change, type State, undoOf } from "@tapside/records";
import type { Edit } from "./live-book.ts";

export interface Step {
  readonly before: State;
  readonly changes: readonly Change[];
}

/** The steps of this tab that can be taken back, the newest first; and those just taken back, which can be put back until something new is written. */
export function undoSteps() {
  let steps: readonly Step[] = [];
  let takenBack: readonly Step[] = [];
  return {
    add: (step: Step) => {
      steps = [...steps, step];
      takenBack = [];
    },
    /** Takes the newest step off and tells what takes it back, and the field it first touched. */
    take: (
      now: State,
    ): { readonly edits: readonly Edit[]; readonly field: string | undefined } | undefined => {
      const step = steps.at(-1);
      if (!step) return undefined;
      steps = steps.slice(0, -1);
      return { edits: editsBack(step, now), field: Object.keys(step.changes[0]?.fields ?? {})[0] };
    },
    wasTakenBack: (step: Step) => {
      takenBack = [...takenBack, step];
    },
    /** Takes the newest undo off and tells what puts its step back. */
    takePutBack: (now: State): readonly Edit[] | undefined => {
      const step = takenBack.at(-1);
      takenBack = takenBack.slice(0, -1);
      return step && editsBack(step, now);
    },
    /** A step put back can be taken back again, and leaves the others there to be put back. */
    wasPutBack: (step: Step) => {
      steps = [...steps, step];
    },
    get any() {
      return steps.length > 0;
    },
    get anyTakenBack() {
      return takenBack.length > 0;
    },
  };
}

const editsBack = (step: Step, now: State): readonly Edit[] =>
  step.changes
    .map((change) => ({
      kind: change.kind,
      record: change.record,
      fields: undoOf(change, step.before, now),
    }))
    .filter((edit) => Object.keys(edit.fields).length > 0);
