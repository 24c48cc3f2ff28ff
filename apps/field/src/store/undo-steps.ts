import { type Change, type State, undoOf } from "@tapside/records";
import type { Edit } from "./live-book.ts";

interface Step {
  readonly before: State;
  readonly changes: readonly Change[];
}

/** The steps of this tab that can be taken back, the newest first. */
export function undoSteps() {
  let steps: readonly Step[] = [];
  return {
    add: (step: Step) => {
      steps = [...steps, step];
    },
    /** Takes the newest step off and tells what takes it back, and the field it first touched. */
    take: (
      now: State,
    ): { readonly edits: readonly Edit[]; readonly field: string | undefined } | undefined => {
      const step = steps.at(-1);
      if (!step) return undefined;
      steps = steps.slice(0, -1);
      const edits = step.changes
        .map((change) => ({
          kind: change.kind,
          record: change.record,
          fields: undoOf(change, step.before, now),
        }))
        .filter((edit) => Object.keys(edit.fields).length > 0);
      return { edits, field: Object.keys(step.changes[0]?.fields ?? {})[0] };
    },
    get any() {
      return steps.length > 0;
    },
  };
}
