import type { PartRole } from "./units.ts";

export type VanWhy = "counted" | "loaded" | "returned" | "ordered";

/** Parts that came into the van or left it otherwise than into a unit; what a visit fits is taken off by its own record. */
export interface VanEntry {
  readonly role: PartRole;
  readonly why: VanWhy;
  /** How many; "counted" says how many are there. */
  readonly count: number;
  /** ISO 8601 instant. */
  readonly at: string;
}
