import {
  type Assessment,
  type ExpectedId,
  type Figure,
  type Finding,
  readsAsExpected,
} from "@tapside/assessment";
import type { BandPart } from "@tapside/pictures";
import type { Outcome } from "@tapside/quantities";
import type { KeptVisit, Phase, Reading, SlotId, UnitFile } from "@tapside/records";
import { absentPorts, SLOTS } from "@tapside/records";
import { formatFigure, formatRange, inSign, type Messages, plainNumber } from "@tapside/words";
import type { CellMark, ReadingCell, ReadingRow } from "./block.ts";

interface RowPlan {
  readonly slot?: SlotId;
  readonly figure?: keyof Assessment["figures"]["asFound"];
  /** Finding that judges this row. */
  readonly finding?: string;
  /** The finding is about what this reading differs by, not about the reading itself. */
  readonly of?: "difference";
  readonly title?: keyof Messages["record"]["rows"];
  readonly part?: BandPart;
}

/** The rows of the record, in the order of the water. */
const PLAN: readonly RowPlan[] = [
  { slot: "feedTds", finding: "feedTds", part: "tap" },
  { slot: "beforeFilterPressure", finding: "feedPressure" },
  { slot: "afterFilterPressure", finding: "filterDrop", of: "difference", part: "cartridge" },
  { slot: "chlorineAfter", finding: "chlorineAfterCarbon", part: "shutOff" },
  { figure: "drainFlow", title: "drain", part: "element" },
  { figure: "permeateFlow", title: "permeate" },
  { slot: "permeateTds" },
  { figure: "percentReduction", title: "percentReduction", finding: "percentReduction" },
  { figure: "flowRatio", title: "membraneFlow", finding: "membraneFlow" },
  { figure: "saltRatio", title: "saltPassage", finding: "saltPassage" },
  { figure: "airCharge", title: "airCharge", finding: "airCharge", part: "tank" },
  { figure: "usableLitres", title: "usableLitres" },
  { slot: "deliveredTds", finding: "delivered", part: "outlet" },
];

export function readingRows(
  file: UnitFile,
  visit: KeptVisit,
  assessment: Assessment,
  words: Messages,
): readonly ReadingRow[] {
  const absent = new Set(absentPorts(file.unit));
  return PLAN.map((plan) => {
    const noPort = plan.slot !== undefined && absent.has(SLOTS[plan.slot].port);
    const asFound = cell(plan, "asFound", visit, assessment, words, noPort);
    const asLeft = cell(plan, "asLeft", visit, assessment, words, noPort);
    return {
      title: plan.title ? words.record.rows[plan.title] : plan.slot ? words.slots[plan.slot] : "",
      note: noteOf(plan, visit, assessment, words),
      asFound,
      asLeft,
      limit: heldAgainst(plan, [asFound.mark, asLeft.mark], assessment, words),
      ...(plan.part && { part: plan.part }),
    };
  });
}

const findingFor = (plan: RowPlan, phase: Phase, assessment: Assessment): Finding | undefined =>
  assessment.findings.find((one) => one.phase === phase && one.id === plan.finding);

function cell(
  plan: RowPlan,
  phase: Phase,
  visit: KeptVisit,
  assessment: Assessment,
  words: Messages,
  noPort: boolean,
): ReadingCell {
  const text = plan.slot
    ? readingText(visit.readings[phase][plan.slot], words)
    : figureText(assessment.figures[phase][plan.figure!] as Outcome<Figure>, words);
  if (text === undefined)
    return { text: noPort ? words.record.says.noPort : words.record.says.notRead, mark: "none" };
  return { text, mark: markOf(plan, phase, visit, assessment) };
}

/** A limit's answer comes first; beyond it, whether a sound unit would read so today. */
function markOf(plan: RowPlan, phase: Phase, visit: KeptVisit, assessment: Assessment): CellMark {
  const verdict = findingFor(plan, phase, assessment)?.verdict;
  if (verdict === "outside" || verdict === "tooClose") return verdict;
  const id = (plan.slot ?? plan.figure) as ExpectedId;
  return readsAsExpected(id, phase, visit, assessment) === false ? "notExpected" : "none";
}

function readingText(reading: Reading | undefined, words: Messages): string | undefined {
  if (!reading) return undefined;
  if (reading.value === null) return words.record.says.photoOnly;
  return reading.notDetected
    ? `<${plainNumber(reading.value, words.decimalSign)}`
    : inSign(reading.raw, words.decimalSign);
}

const figureText = (figure: Outcome<Figure>, { decimalSign }: Messages): string | undefined =>
  figure.kind === "known" ? formatFigure(figure.value, decimalSign).text : undefined;

function noteOf(plan: RowPlan, visit: KeptVisit, assessment: Assessment, words: Messages): string {
  if (plan.slot) {
    const reading = visit.readings.asFound[plan.slot] ?? visit.readings.asLeft[plan.slot];
    const finding = findingFor(plan, "asFound", assessment);
    const own =
      plan.of !== "difference" && finding?.figure && finding.figure.unit === reading?.unit
        ? formatFigure(finding.figure, words.decimalSign).uText
        : "";
    return [
      reading?.unit,
      own && `± ${own}`,
      reading?.scale && words.record.scale(reading.scale),
      reading?.doubtful && words.record.says.doubtful,
    ]
      .filter(Boolean)
      .join(", ")
      .replace(", ±", " ±");
  }
  const figures = assessment.figures;
  const figure = [figures.asFound, figures.asLeft]
    .map((one) => one[plan.figure!] as Outcome<Figure>)
    .find((one) => one.kind === "known");
  if (figure?.kind !== "known") return "";
  const { uText } = formatFigure(figure.value, words.decimalSign);
  return `${words.unit(figure.value.unit)}${uText ? ` ± ${uText}` : ""}`;
}

/** What the marks of the row were set by: the limit, the band told of a sound unit, or each where the phases differ. */
function heldAgainst(
  plan: RowPlan,
  marks: readonly CellMark[],
  assessment: Assessment,
  words: Messages,
): string {
  const limit = limitOf(plan, assessment, words);
  const band = bandOf(plan, assessment, words);
  if (!limit || !marks.includes("notExpected")) return limit ?? band ?? noneOf(plan, words);
  const byLimit = marks.some((mark) => mark === "outside" || mark === "tooClose");
  return byLimit && band ? `${limit}; ${band}` : (band ?? limit);
}

function limitOf(plan: RowPlan, assessment: Assessment, words: Messages): string | undefined {
  const finding = findingFor(plan, "asFound", assessment) ?? findingFor(plan, "asLeft", assessment);
  if (!finding?.limit) return undefined;
  const { title, limit } = words.finding(finding);
  return plan.of === "difference" ? `${title} ${limit}` : limit;
}

function bandOf(plan: RowPlan, assessment: Assessment, words: Messages): string | undefined {
  const id = (plan.slot ?? plan.figure) as ExpectedId;
  const expected = assessment.expected.kind === "known" ? assessment.expected.value[id] : undefined;
  if (!expected) return undefined;
  return `${formatRange(expected, words.decimalSign)} ${expected.unit}: ${words.record.says.thisUnitToday}`;
}

function noneOf(plan: RowPlan, words: Messages): string {
  return plan.slot === "deliveredTds" ? words.record.says.noLimit : words.record.says.forInformation;
}
