import type { KeptVisit } from "./book.ts";
import type { Reading } from "./kinds.ts";
import { SLOTS } from "./slots.ts";

/** The air charge that was set at a visit and written down with the work; "notWritten" where it was set and nobody wrote to what, undefined where it was not touched. */
export function chargeSet({ work }: Pick<KeptVisit, "work">): Reading | "notWritten" | undefined {
  const { state, value, unit } = work.setAirCharge ?? {};
  if (state !== "done") return undefined;
  if (value === undefined || unit === undefined) return "notWritten";
  return { raw: String(value), value, unit, port: SLOTS.airCharge.port, at: "" };
}
