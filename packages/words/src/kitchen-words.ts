import type { ApplianceType } from "@tapside/records";

/** What the two pages for the people of the kitchen say: the card that hangs at the unit, and the page in plain words. */
export interface KitchenWords {
  /** Whether the unit keeps up with a busy day, and what would help. */
  readonly day: {
    readonly title: string;
    asked(litres: string, u: string): string;
    serves(low: string, high: string, celsius: string): string;
    readonly verdicts: Readonly<Record<"keepsUp" | "tooCloseToSay" | "short", string>>;
    enoughWith(remedy: string, low: string, high: string): string;
    readonly nothingTried: string;
    readonly remedies: Readonly<
      Record<"asItIs" | "airCharge" | "secondTank" | "booster" | "twiceTheElement" | "elementAndTank", string>
    >;
    air(psi: string): string;
    readonly estimate: string;
  };
  readonly card: {
    readonly title: string;
    readonly titles: Readonly<Record<"unit" | "full" | "ring" | "never" | "leak", string>>;
    unit(appliances: string): string;
    readonly tankHolds: string;
    notBefore(latest: string): string;
    fullAbout(about: string): string;
    readonly fullNotKnown: string;
    readonly bypassed: string;
    ring(name: string, phone: string): string;
    readonly readOut: Readonly<Record<"time" | "gauge" | "silent", string>>;
    readonly ringWhen: readonly string[];
    readonly never: readonly string[];
    shutValve(where: string): string;
    readonly sign: string;
    /** Where the sign opens the questions a kitchen is asked. */
    readonly signAsks: string;
  };
  readonly page: {
    readonly title: string;
    readonly titles: Readonly<Record<"water" | "checks" | "next" | "open", string>>;
    feed(figure: string): string;
    delivered(figure: string): string;
    takenOut(percent: number): string;
    hardness(figure: string): string;
    readonly notRead: string;
    bypassed(until: string): string;
    kept(names: string): string;
    outside(names: string): string;
    notTold(names: string): string;
    readonly noLimits: string;
    /** What water does to an appliance of this kind. */
    readonly does: Readonly<Record<ApplianceType, string>>;
    /** What the kitchen does about it itself, and how often. */
    readonly care: Readonly<Record<ApplianceType, string>>;
    readonly checks: readonly string[];
    dueBy(part: string, day: string): string;
    readonly dueNow: string;
    readonly nothingDue: string;
    readonly manualRules: string;
  };
}
