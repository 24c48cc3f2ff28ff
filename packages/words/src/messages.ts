import type { Finding, LifePoint, Question, Task, Verdict } from "@tapside/assessment";
import type { Missing, Refused } from "@tapside/quantities";
import type { ApplianceType, OpenPoint, PartRole, Phase, PortId, SlotId, VisitKind } from "@tapside/records";
import type { CauseMessages } from "./cause-messages.ts";
import type { ClaimWords } from "./claim-words.ts";
import type { RecordWords } from "./record-words.ts";
import type { VisitWords } from "./visit-words.ts";
import type { WaterWords } from "./water-words.ts";

export type DecimalSign = "." | ",";

/** One finding in words, each short enough for a line of a phone. */
export interface FindingWords {
  readonly title: string;
  readonly verdict: string;
  /** "up to 4: office rule"; empty without a limit. */
  readonly limit: string;
  /** Where the limit comes from, alone. */
  readonly source: string;
  /** Why, or what would tell; may be empty. */
  readonly reason: string;
}

/** Every sentence about a judgement and of its record, in one language. A further language is a further object of this type. */
export interface Messages {
  readonly language: string;
  /** The sign its numbers are shown with where nobody chose another. */
  readonly decimalSign: DecimalSign;
  readonly record: RecordWords;
  readonly visit: VisitWords;
  readonly claim: ClaimWords;
  readonly water: WaterWords;
  readonly phases: Readonly<Record<Phase, string>>;
  readonly visitKinds: Readonly<Record<VisitKind, string>>;
  readonly slots: Readonly<Record<SlotId, string>>;
  readonly ports: Readonly<Record<PortId, string>>;
  readonly roles: Readonly<Record<PartRole, string>>;
  readonly appliances: Readonly<Record<ApplianceType, string>>;
  readonly verdicts: Readonly<Record<Verdict, string>>;
  readonly causeNames: CauseMessages["causes"];
  readonly doesNotTestFor: string;
  readonly localCode: string;
  finding(finding: Finding, decimalSign?: DecimalSign): FindingWords;
  question(question: Question): string;
  /** What is looked at on arrival, in the order of the eye. */
  readonly inspection: Readonly<Record<string, string>>;
  openPoint(point: Partial<OpenPoint>): string;
  settledPoint(point: Partial<OpenPoint>): string;
  /** The life strip in numbers, for those who do not see it. */
  life(points: readonly LifePoint[], decimalSign?: DecimalSign): string;
  taskTitle(taskId: string): string;
  taskWhy(task: Task, decimalSign?: DecimalSign): string;
  caution(cautionId: string): string;
  /** Why somebody has to come: "carbon cartridge, by litres". */
  dueReason(reason: {
    readonly why: string;
    readonly role?: string;
    readonly code?: string;
    readonly detail?: string;
  }): string;
  /** "feed TDS", from a slot or record field id. */
  missingName(id: string): string;
  /** "cannot tell, because … is missing". */
  missing(missing: Missing): string;
  refusal(refused: Pick<Refused, "code"> & Partial<Pick<Refused, "detail">>): string;
  unit(unit: string): string;
  quantity(id: string): string;
  source(id: string): string;
  /** The decision rule by its id. */
  rule(id: string): string;
}
