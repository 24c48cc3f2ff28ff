import { type Assessment, assess, RULES_VERSION } from "@tapside/assessment";
import { known, missing, type Outcome } from "@tapside/quantities";
import type { KeptVisit, Settings, UnitFile } from "@tapside/records";
import type { RecordContent } from "./block.ts";
import { alike } from "./internal/alike.ts";
import { rounded } from "./rounded.ts";

/** A frozen judgement beside the one that the same inputs give now. */
export interface JudgedAgain {
  /** What differs, by name: `findings airCharge asFound`, `figures asFound flowRatio`, `due`. Empty: the same judgement. */
  readonly differs: readonly string[];
  /** Number of the rules then; absent in records from before they had numbers. */
  readonly rulesThen?: number;
  readonly rulesNow: number;
}

/** Inputs as kept: visits that were not compared with stand by the mark of their text only. */
type KeptInputs = Omit<UnitFile, "instruments" | "visits" | "openPoints" | "settledPoints"> & {
  readonly instruments: readonly { readonly id: string }[];
  readonly visits: readonly (Partial<KeptVisit> & { readonly id: string })[];
  readonly openPoints?: UnitFile["openPoints"];
};

/**
 * Judges a frozen record once more from the inputs it keeps, and names what comes out otherwise. Not compared, because the record
 * does not keep what they need: the life strip of visits kept by their mark alone, and work in records that kept no open points.
 * Records of the first kind keep no inputs at all.
 */
export function judgeAgain(content: RecordContent): Outcome<JudgedAgain> {
  const inputs = content.inputs as KeptInputs | undefined;
  const then = content.assessment as Assessment | undefined;
  if (!inputs?.visits || !then) return missing("inputs");
  const now = rounded(assess(fileOf(inputs), content.visit, contextOf(content, then))) as Assessment;
  const before = named(then, inputs);
  const after = named(now, inputs);
  const differs = [...new Set([...before.keys(), ...after.keys()])].filter(
    (name) => !alike(before.get(name), after.get(name)),
  );
  return known({
    differs: differs.sort(),
    rulesNow: RULES_VERSION,
    ...(content.rules !== undefined && { rulesThen: content.rules }),
  });
}

function contextOf({ settings, issuedAt }: RecordContent, { asOf }: Assessment) {
  const { timeZone, ...rest } = (settings ?? {}) as Partial<Settings> & { readonly timeZone?: string };
  return { asOf: asOf ?? issuedAt, timeZone: timeZone ?? "UTC", settings: rest };
}

const fileOf = (inputs: KeptInputs): UnitFile => ({
  ...inputs,
  instruments: new Map(inputs.instruments.map((one) => [one.id, one])),
  visits: inputs.visits.map(withNothingRead),
  openPoints: inputs.openPoints ?? [],
  settledPoints: [],
});

const withNothingRead = (visit: KeptInputs["visits"][number]): KeptVisit => ({
  readings: { asFound: {}, asLeft: {} },
  answers: {},
  exceptions: {},
  work: {},
  photos: {},
  skipped: [],
  ...visit,
});

/** What is judged for each appliance is told apart by it. */
const nameOf = ({ id, phase, detail }: Assessment["findings"][number]): string =>
  ["findings", id, phase, detail?.appliance].filter(Boolean).join(" ");

/** The parts of a judgement that can be compared, by name. */
function named(judged: Assessment, { visits, openPoints }: KeptInputs): ReadonlyMap<string, unknown> {
  const { findings, figures, life, tasks, toRead, ...rest } = judged;
  const whole = new Set(visits.filter((visit) => visit.readings).map((visit) => visit.id));
  return new Map<string, unknown>([
    ...Object.entries(rest),
    ...findings.map((one) => [nameOf(one), one] as const),
    ...Object.entries(figures).flatMap(([phase, ofPhase]) =>
      Object.entries(ofPhase).map(([name, one]) => [`figures ${phase} ${name}`, one] as const),
    ),
    ["life", life.filter((point) => whole.has(point.visit))],
    ...(openPoints
      ? ([
          ["tasks", tasks],
          ["toRead", toRead],
        ] as const)
      : []),
  ]);
}
