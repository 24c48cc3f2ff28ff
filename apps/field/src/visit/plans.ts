import type { KeptVisit, Phase, SlotId, VisitKind } from "@tapside/records";

/** A place in the order of hands: a screen of its own, or numbers to read. */
export type PlanItem =
  | {
      readonly kind: "once";
      readonly id:
        | "ask"
        | "look"
        | "judgement"
        | "work"
        | "valves"
        | "sign"
        | "leave"
        | "record"
        | CheckId
        | "drips"
        | "acceptance"
        | "noAccess";
    }
  | {
      readonly kind: "read";
      readonly phase: Phase;
      readonly slots: readonly SlotId[];
      readonly afterWork?: boolean;
    };

/** Lists that are ticked off: complaint, premises before an installation, what the users were shown. */
export type CheckId = "complaint" | "premises" | "shown";

const once = (id: Extract<PlanItem, { kind: "once" }>["id"]): PlanItem => ({ kind: "once", id });

const ending = [once("valves"), once("sign"), once("leave"), once("record")];

const throughTheMembrane: readonly SlotId[] = ["permeateFlow", "drainFlow", "permeateTds"];

const asLeft: PlanItem = {
  kind: "read",
  phase: "asLeft",
  slots: ["afterFilterPressure", ...throughTheMembrane],
  afterWork: true,
};

const read = (phase: Phase, ...slots: readonly SlotId[]): PlanItem => ({ kind: "read", phase, slots });

/** The order of hands for each kind of visit. Later kinds are added here and nowhere else. */
export const PLANS: Readonly<Record<VisitKind, readonly PlanItem[]>> = {
  annual: [
    once("ask"),
    once("look"),
    { kind: "read", phase: "asFound", slots: ["deliveredTds", "tankFullPressure", "waterMeter"] },
    {
      kind: "read",
      phase: "asFound",
      slots: ["feedTds", "feedTemperature", "chlorineBefore", "chlorineAfter"],
    },
    { kind: "read", phase: "asFound", slots: ["tankAfterPressure"] },
    { kind: "read", phase: "asFound", slots: ["beforeFilterPressure", "afterFilterPressure"] },
    { kind: "read", phase: "asFound", slots: throughTheMembrane },
    once("judgement"),
    once("work"),
    asLeft,
    ...ending,
  ],
  filterOnly: [
    once("ask"),
    { kind: "read", phase: "asFound", slots: ["feedTds", "deliveredTds", "waterMeter"] },
    once("work"),
    { kind: "read", phase: "asLeft", slots: ["afterFilterPressure"], afterWork: true },
    ...ending,
  ],
  callOut: [
    once("ask"),
    once("complaint"),
    once("look"),
    { kind: "read", phase: "asFound", slots: ["deliveredTds", "tankFullPressure", "waterMeter"] },
    {
      kind: "read",
      phase: "asFound",
      slots: ["feedTds", "feedTemperature", "chlorineBefore", "chlorineAfter"],
    },
    {
      kind: "read",
      phase: "asFound",
      slots: ["staticPressure", "beforeFilterPressure", "afterFilterPressure"],
    },
    { kind: "read", phase: "asFound", slots: throughTheMembrane },
    once("judgement"),
    once("work"),
    asLeft,
    ...ending,
  ],
  commissioning: [
    once("ask"),
    once("look"),
    {
      kind: "read",
      phase: "asFound",
      slots: ["feedTds", "feedTemperature", "hardness", "chlorineBefore", "chlorineAfter"],
    },
    read("asFound", "staticPressure", "nightPressure", "drainGap", "airCharge", "waterMeter"),
    once("work"),
    {
      kind: "read",
      phase: "asFound",
      slots: ["beforeFilterPressure", "afterFilterPressure", ...throughTheMembrane],
    },
    once("judgement"),
    once("drips"),
    once("shown"),
    once("acceptance"),
    ...ending,
  ],
  quality: [
    once("ask"),
    once("complaint"),
    once("look"),
    read("asFound", "chlorineFreeAfter", "chlorineAfter", "chlorineFreeBefore", "chlorineBefore"),
    read("asFound", "firstDrawTds", "deliveredTds", "waterMeter", "feedTds", "feedTemperature"),
    read("asFound", "beforeFilterPressure", "afterFilterPressure"),
    read("asFound", "permeateTds", "permeateFlow", "drainFlow"),
    once("judgement"),
    once("work"),
    { kind: "read", phase: "asLeft", slots: ["chlorineAfter", ...throughTheMembrane], afterWork: true },
    ...ending,
  ],
  survey: [
    once("premises"),
    read(
      "asFound",
      "peakPressure",
      "nightPressure",
      "feedTds",
      "feedTemperature",
      "hardness",
      "feedChloride",
    ),
    read("asFound", "chlorineBefore", "chloramine", "drainHeight"),
    once("sign"),
    once("record"),
  ],
  returnVisit: [
    once("ask"),
    read("asFound", "deliveredTds", "feedTds", "feedTemperature"),
    once("work"),
    {
      kind: "read",
      phase: "asLeft",
      slots: ["afterFilterPressure", ...throughTheMembrane, "deliveredTds"],
      afterWork: true,
    },
    ...ending,
  ],
  shutDown: [
    once("ask"),
    read("asFound", "waterMeter", "deliveredTds"),
    once("work"),
    once("valves"),
    once("sign"),
    once("record"),
  ],
  restart: [
    once("ask"),
    once("look"),
    read("asFound", "waterMeter", "feedTds", "feedTemperature", "chlorineBefore"),
    once("work"),
    {
      kind: "read",
      phase: "asLeft",
      slots: ["chlorineAfter", "beforeFilterPressure", ...throughTheMembrane, "deliveredTds"],
      afterWork: true,
    },
    ...ending,
  ],
  removal: [once("ask"), read("asFound", "waterMeter"), once("work"), once("sign"), once("record")],
  noAccess: [once("noAccess"), once("record")],
};

/** What a complaint asks to be read, and after which reading its hands come by. A drain that goes on with the feed shut is water leaking back, one that stops is the shut-off. */
const ASKED_BY_COMPLAINT: Readonly<Record<string, { readonly after: SlotId; readonly slot: SlotId }>> = {
  drainRuns: { after: "tankFullPressure", slot: "drainFlowFeedClosed" },
};

/** The slots of a place in the plan, with what this visit's complaint asks for. */
export function slotsAsked(item: Extract<PlanItem, { kind: "read" }>, visit: KeptVisit): readonly SlotId[] {
  const asked = (visit.answers.complaint?.items ?? []).flatMap((one) => ASKED_BY_COMPLAINT[one] ?? []);
  return item.slots.flatMap((slot) => [
    slot,
    ...asked.filter((one) => item.phase === "asFound" && one.after === slot).map((one) => one.slot),
  ]);
}

/** Whether this visit asks for the slot by itself. */
export const asksFor = (visit: KeptVisit, slot: SlotId): boolean =>
  PLANS[visit.kind ?? "annual"].some(
    (item) => item.kind === "read" && slotsAsked(item, visit).includes(slot),
  );
