export {
  allKnown,
  type Known,
  known,
  type Missing,
  mapOutcome,
  missing,
  type Outcome,
  type Refused,
  refused,
} from "./outcome.ts";
export type { Uncertain } from "./uncertain.ts";
