import type { KeptVisit } from "./book.ts";

/** Whether a visit found the unit bypassed and did not put it back in use: what it makes does not reach the appliances. */
export const staysBypassed = ({ answers }: Pick<KeptVisit, "answers">): boolean =>
  answers.inUse === "bypassed" && answers.bypass?.decision !== "putInUse";
