export interface Site {
  readonly name: string;
  readonly code?: string;
  readonly altitudeM?: number;
  readonly waterSource?: string;
  readonly askName?: string;
  readonly askRole?: string;
  readonly askPhone?: string;
  readonly timeZone?: string;
  readonly notes?: string;
  /** Name of the chain or district the site belongs to; its sites have codes. */
  readonly chain?: string;
  readonly address?: string;
  /** Who gets a copy of every record: head office, landlord, service of the appliance. */
  readonly copiesTo?: string;
  readonly key?: string;
  readonly hours?: string;
  /** The owner's language, for the record they get ("es"); without it, English. */
  readonly language?: string;
}

/** Who owns a site from a day on. What was before that day belongs to the owner before. */
export interface Ownership {
  readonly site: string;
  readonly owner: string;
  readonly since: string;
  /** True when this owner may see what was before. */
  readonly seesEarlier?: boolean;
}

/** Where a unit hangs. History follows the point and the unit's serial. */
export interface InstallationPoint {
  readonly site: string;
  readonly name: string;
  readonly where?: string;
  readonly bypassFitted?: boolean;
  /** Hash of the photo that shows where it hangs. */
  readonly photo?: string;
  readonly isolationValve?: string;
  readonly drain?: string;
}

export type MoveWhy = "fitted" | "moved" | "swapped" | "lent" | "back" | "store" | "removed";

/** A unit came to a point, or left for the store (no point), on a day. */
export interface Move {
  readonly unit: string;
  readonly from?: string;
  readonly to?: string;
  readonly on: string;
  readonly why: MoveWhy;
  /** For a loan: the day it should be back. */
  readonly until?: string;
}

/** A visit planned for a day. */
export interface Plan {
  readonly unit: string;
  /** ISO date. */
  readonly on: string;
  /** "06:30". */
  readonly at?: string;
  readonly reason?: string;
}
