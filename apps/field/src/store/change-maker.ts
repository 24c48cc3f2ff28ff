import {
  type Change,
  GONE,
  NO_STAMP,
  nextStamp,
  observeStamp,
  replacedBy,
  SCHEMA,
  type State,
} from "@tapside/records";
import type { Edit } from "./live-book.ts";
import { newId } from "./new-id.ts";

/** Makes changes of edits, each later than everything this tab has seen. */
export function changeMaker(device: string) {
  let clock = NO_STAMP;
  let clockAhead = false;
  return {
    observe: (at: string) => {
      const observed = observeStamp(clock, at, Date.now());
      clock = observed.newest;
      clockAhead ||= observed.tooFarAhead;
    },
    make: (edit: Edit, state: State, why: string | undefined): Change => {
      const wallMs = Date.now();
      clock = nextStamp(clock, wallMs);
      const record = state.records.get(edit.record);
      const fields = broughtBack(edit, state);
      const over = replacedBy(device, record, Object.keys(fields));
      return {
        id: newId(),
        record: edit.record,
        kind: edit.kind,
        fields,
        at: clock,
        wall: new Date(wallMs).toISOString(),
        device,
        schema: SCHEMA,
        ...(why !== undefined && { why }),
        ...(over.length > 0 && { over }),
      };
    },
    /** The newest stamp seen. */
    get clock() {
      return clock;
    },
    get clockAhead() {
      return clockAhead;
    },
  };
}

/** Writing to a record that was taken out brings it back. */
function broughtBack(edit: Edit, state: State): Edit["fields"] {
  const gone = state.records.get(edit.record)?.fields.get(GONE)?.value === true;
  return gone && !(GONE in edit.fields) ? { ...edit.fields, [GONE]: false } : edit.fields;
}
