export type VisitKind =
  | "annual"
  | "filterOnly"
  | "callOut"
  | "quality"
  | "commissioning"
  | "survey"
  | "returnVisit"
  | "shutDown"
  | "restart"
  | "removal"
  | "noAccess";

/** A visit; its readings, answers and photos are fields of it, see `VisitFields`. */
export interface Visit {
  readonly unit: string;
  readonly point: string;
  readonly kind: VisitKind;
  readonly startedAt: string;
  readonly endedAt?: string;
  readonly technician?: string;
  readonly closed?: boolean;
  /** The customer's order number, for the office's bill. */
  readonly orderNumber?: string;
  /** What a quote is wanted for. */
  readonly quoteWanted?: string;
}

export interface PersonAsked {
  readonly name: string;
  readonly role: string;
}

/** Valves whose state is written down when a visit ends. */
export type ValveId = "feed" | "tank" | "bypass" | "drain" | "sample" | "blend";

/** Answers of a visit, by step. Each is one field `answer:<id>`. */
export interface Answers {
  readonly inUse: "inUse" | "bypassed";
  readonly bypass: PersonAsked & {
    readonly decision: "keepBypassed" | "putInUse";
    /** By what right the person may allow it: "owner", "tenant", "headOffice", "keyHolder". */
    readonly authority?: string;
    /** Asked on the telephone, not on the spot. */
    readonly byPhone?: boolean;
    /** The words the person used. */
    readonly words?: string;
    readonly until?: string;
    readonly seal?: string;
    /** True when it was said that no seal is fitted. */
    readonly noSeal?: boolean;
    /** Day since which water goes past the unit, as far as anybody knows. */
    readonly since?: string;
    /** Litres a day that go to the appliances, for the upper bound of scale. */
    readonly litresPerDay?: number;
  };
  readonly inspection: "asItShouldBe";
  /** The tank when the first samples were taken, nothing touched yet. */
  readonly tankState: "full" | "filling" | "unknown";
  readonly roOptional: PersonAsked & { readonly decision: "keep" | "takeOut" | "undecided" };
  readonly valvesAsLeft: {
    readonly feed: "open" | "shut";
    readonly tank: "open" | "shut";
    readonly bypass: "open" | "shut";
    readonly sample: "open" | "shut";
    /** The valve of the drain line, where it was looked at. */
    readonly drain?: "open" | "shut";
    /** The blend valve of a unit that has one; shut means nothing is mixed in. */
    readonly blend?: "open" | "shut";
    /** Seal number on the bypass. */
    readonly seal?: string;
    /** The appliances were seen filling after the valves were set. */
    readonly appliancesFill?: "seen" | "notSeen";
  };
  readonly signature: {
    readonly kind: "signed" | "notPresent" | "refused";
    readonly name?: string;
    readonly role?: string;
    readonly path?: string;
  };
  readonly filling: { readonly state: "seen" | "notSeen" | "reported"; readonly expectedHours?: number };
  /** Nobody let in, or broken off: why, and when. */
  readonly noAccess: { readonly reason: string; readonly at: string; readonly note?: string };
  /** When hands were there. `minutes` is what was worked, which may be less than departure minus arrival. */
  readonly times: { readonly arrivedAt: string; readonly leftAt?: string; readonly minutes?: number };
  /** Who else was there. */
  readonly others: { readonly names: string };
  /** Why there is no photo of a leak from before it was touched. */
  readonly leakPhoto: { readonly reason: string };
  readonly complaint: Ticked;
  readonly premises: Ticked;
  /** What the appliances' own counters showed, by appliance. */
  readonly counters: Readonly<Record<string, { readonly value: number; readonly unit: string }>>;
  readonly shown: Ticked;
  readonly drips: {
    readonly minutes: number;
    readonly pressure?: number;
    readonly unit?: string;
    readonly seen: "none" | "some";
  };
  readonly acceptance: PersonAsked & {
    readonly decision: "accepted" | "withReserve" | "refused";
    readonly note?: string;
  };
}

/** Items of a list that were ticked, others that were looked at and are not so, and words about them. */
export interface Ticked {
  readonly items: readonly string[];
  readonly not?: readonly string[];
  readonly note?: string;
}

/** Something at the inspection that is not as it should be: field `exception:<item>`. */
export interface Exception {
  readonly state: "corrected" | "left" | "found";
  readonly note?: string;
  readonly photo?: string;
}

/** What the hands did about a proposed task: field `work:<task>`. */
export interface Work {
  readonly state: "done" | "left";
  readonly reason?: string;
  readonly lot?: string;
  /** Serial number of the part fitted. */
  readonly serial?: string;
  readonly part?: string;
  /** New value when a setting was made, e.g. air charge, with its unit. */
  readonly value?: number;
  readonly unit?: string;
}

/** One step of a procedure as it was done: field `step:<task>:<step>`. */
export interface StepDone {
  /** ISO 8601 instant. */
  readonly at: string;
  readonly value?: number;
  readonly unit?: string;
  /** A test that showed nothing; `value` is then the detection step. */
  readonly notDetected?: boolean;
  readonly minutes?: number;
  readonly text?: string;
  /** Numbers a computed value was made from, for its arithmetic. */
  readonly from?: Readonly<Record<string, number>>;
}

/** Waiting that runs by itself: field `timer:<id>`. All instants are ms since 1970 UTC, so no change of the clock's zone moves them. */
export interface Timer {
  /** What is waited for: "tankDraining", "toWaste", "carbonRinse", "contact", "filling". */
  readonly what: string;
  readonly startedMs: number;
  readonly durationMs: number;
  /** How far the phone's clock was seen to jump while this ran; taken off again. */
  readonly jumpedMs?: number;
  readonly stoppedMs?: number;
  /** The task it belongs to. */
  readonly task?: string;
}

/** A photo wanted or taken: field `photo:<id>`. `hash` is null until the bytes are kept. */
export interface PhotoNote {
  readonly for: string;
  readonly hash: string | null;
  readonly at: string;
}
