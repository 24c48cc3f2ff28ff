import type { Outcome, Uncertain } from "@tapside/quantities";
import type { Phase, Settings, SlotId, TdsScale } from "@tapside/records";
import type { WaterJudged } from "./water-judged.ts";

/** Everything an assessment may use beside the records themselves: same records and context in, same judgement out. */
export interface Context {
  /** ISO 8601 instant. */
  readonly asOf: string;
  readonly timeZone: string;
  readonly settings: Partial<Settings>;
}

/** A computed or measured figure in trade units, with standard uncertainty `u` (one sigma). */
export interface Figure extends Uncertain {
  readonly unit: string;
  readonly scale?: TdsScale;
  /** True when a reading was converted from another dissolved-solids scale. */
  readonly converted?: boolean;
  /** Decimals the meter showed, where the figure is a reading in its own unit. */
  readonly decimalsRead?: number;
}

/** The figures of one phase of one visit. Each may be missing or refused with its reason. */
export interface Figures {
  readonly percentReduction: Outcome<Figure>;
  readonly recovery: Outcome<Figure>;
  /** Permeability to water against this element when new (commissioning visit, else nameplate): 1 = as new. */
  readonly flowRatio: Outcome<Figure>;
  /** Salt passage constant against this element when new: 1 = as new. */
  readonly saltRatio: Outcome<Figure>;
  readonly filterDrop: Outcome<Figure>;
  readonly permeateFlow: Outcome<Figure>;
  readonly drainFlow: Outcome<Figure>;
  readonly airCharge: Outcome<Figure>;
  readonly usableLitres: Outcome<Figure>;
  readonly usableLitresAtBest: Outcome<Figure>;
  readonly bestCharge: Outcome<Figure>;
  readonly shutOffPressure: Outcome<Figure>;
  readonly fillingHours: Outcome<Figure>;
  readonly deliveredTds: Outcome<Figure>;
  readonly carbonLeft: Outcome<{ readonly lowM3: number; readonly highM3: number }>;
}

export type Verdict = "within" | "outside" | "tooClose" | "cannotTell" | "information";

/** One judged thing. `id` and `source` are plain ids; the words package turns them into sentences. */
export interface Finding {
  readonly id: string;
  readonly phase: Phase;
  readonly verdict: Verdict;
  readonly figure?: Figure;
  readonly limit?: {
    readonly low?: number;
    readonly high?: number;
    readonly unit: string;
    readonly scale?: TdsScale;
    readonly source: string;
    readonly detail?: Readonly<Record<string, string | number>>;
  };
  /** Signed distance beyond the nearer limit, in units of the expanded uncertainty U (k = 2). Negative = inside. */
  readonly distance?: number;
  /** Decision rule that gave the verdict. */
  readonly rule?: string;
  /** Slots or record fields whose absence makes it "cannot tell". */
  readonly missing?: readonly string[];
  /** What to do about it: a task id. */
  readonly action?: string;
  readonly detail?: Readonly<Record<string, string | number>>;
  /** Higher comes first. */
  readonly consequence: number;
}

/** A reading or pair of readings that looks like a slip: asked, never silently corrected. */
export interface Question {
  readonly id: string;
  readonly slots: readonly string[];
  readonly detail?: Readonly<Record<string, string | number>>;
}

/** "What should it read today?": an interval holding a sound unit 19 times in 20. */
export interface Expected {
  readonly low: number;
  readonly high: number;
  readonly value: number;
  readonly unit: string;
  readonly scale?: TdsScale;
}

export type ExpectedId =
  | "afterFilterPressure"
  | "drainFlow"
  | "permeateFlow"
  | "permeateTds"
  | "tankFullPressure"
  | "deliveredTds";

/** Service work proposed for this visit. */
export interface Task {
  /** e.g. "replace:sediment", "replace:element", "setAirCharge", "sanitise". */
  readonly id: string;
  readonly why: "dueByDate" | "dueByLitres" | "dueByHours" | "finding" | "openPoint" | "kindOfVisit";
  readonly part?: string;
  readonly detail?: Readonly<Record<string, string | number>>;
  /** Caution ids that stand at this task. */
  readonly cautions: readonly string[];
}

export interface DueItem {
  readonly part: string;
  readonly role: string;
  /** ISO date; null when the fitting date is not known. */
  readonly byDate: string | null;
  readonly litresLeft?: { readonly low: number; readonly high: number };
  /** Of the hours it is made for, by the hour counter. */
  readonly hoursLeft?: number;
  readonly overdue: boolean;
}

/** One point on the element's life strip. */
export interface LifePoint {
  readonly visit: string;
  readonly at: string;
  readonly flowRatio?: Uncertain;
  readonly saltRatio?: Uncertain;
  readonly marks: readonly ("new" | "filters" | "element" | "bypass" | "provisional")[];
}

/** A number taken for granted where nothing was read, with its origin: the unit's record, the settings, or the house. */
export interface Assumption {
  readonly id: string;
  readonly value: number;
  readonly unit: string;
  readonly origin: "unit" | "settings" | "house";
}

export interface Assessment {
  readonly version: 1;
  readonly unit: string;
  readonly visit: string;
  readonly asOf: string;
  readonly temperatureForm: string;
  readonly figures: Readonly<Record<Phase, Figures>>;
  readonly expected: Outcome<Readonly<Partial<Record<ExpectedId, Expected>>>>;
  /** In order of consequence. */
  readonly findings: readonly Finding[];
  readonly questions: readonly Question[];
  readonly tasks: readonly Task[];
  readonly due: readonly DueItem[];
  readonly life: readonly LifePoint[];
  readonly assumed: readonly Assumption[];
  /** Ids of earlier visits whose readings it compares with. */
  readonly standsOn: readonly string[];
  /** Slots this kind of visit asks for that are still unread, in the order of hands. */
  readonly toRead: readonly { readonly phase: Phase; readonly slot: SlotId }[];
  /** The feed water completed from what was read and reported; absent in judgements of the first kind. */
  readonly water?: Outcome<WaterJudged>;
}
