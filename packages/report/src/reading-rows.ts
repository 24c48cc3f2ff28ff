import type { Assessment, ExpectedId, Figure, Finding } from "@tapside/assessment";
import type { Outcome } from "@tapside/quantities";
import type { KeptVisit, Phase, Reading, SlotId } from "@tapside/records";
import { formatFigure, type Messages, plainNumber } from "@tapside/words";
import type { CellMark, ReadingCell, ReadingRow } from "./block.ts";

interface RowPlan {
  readonly slot?: SlotId;
  readonly figure?: keyof Assessment["figures"]["asFound"];
  /** Finding that judges this row. */
  readonly finding?: string;
  readonly title?: string;
}

/** The rows of the record, in the order of the water. */
const PLAN: readonly RowPlan[] = [
  { slot: "feedTds", finding: "feedTds" },
  { slot: "beforeFilterPressure", finding: "feedPressure" },
  { slot: "afterFilterPressure", finding: "filterDrop" },
  { slot: "chlorineAfter", finding: "chlorineAfterCarbon" },
  { figure: "drainFlow", title: "Drain" },
  { figure: "permeateFlow", title: "Permeate" },
  { slot: "permeateTds" },
  { figure: "percentReduction", title: "Percent reduction", finding: "percentReduction" },
  { figure: "flowRatio", title: "Membrane flow", finding: "membraneFlow" },
  { figure: "saltRatio", title: "Salt passage", finding: "saltPassage" },
  { figure: "airCharge", title: "Tank air charge", finding: "airCharge" },
  { figure: "usableLitres", title: "Usable litres" },
  { slot: "deliveredTds", finding: "delivered" },
];

export function readingRows(
  visit: KeptVisit,
  assessment: Assessment,
  words: Messages,
): readonly ReadingRow[] {
  return PLAN.map((plan) => ({
    title: plan.title ?? (plan.slot ? words.slots[plan.slot] : ""),
    note: noteOf(plan, visit, assessment),
    asFound: cell(plan, "asFound", visit, assessment),
    asLeft: cell(plan, "asLeft", visit, assessment),
    limit: limitOf(plan, assessment, words),
  }));
}

const findingFor = (plan: RowPlan, phase: Phase, assessment: Assessment): Finding | undefined =>
  assessment.findings.find((one) => one.phase === phase && one.id === plan.finding);

function cell(plan: RowPlan, phase: Phase, visit: KeptVisit, assessment: Assessment): ReadingCell {
  const verdict = findingFor(plan, phase, assessment)?.verdict;
  const mark: CellMark = verdict === "outside" ? "outside" : verdict === "tooClose" ? "tooClose" : "none";
  const text = plan.slot
    ? readingText(visit.readings[phase][plan.slot])
    : figureText(assessment.figures[phase][plan.figure!] as Outcome<Figure>);
  return text === undefined ? { text: "not read", mark: "none" } : { text, mark };
}

function readingText(reading: Reading | undefined): string | undefined {
  if (!reading) return undefined;
  if (reading.value === null) return "photo only";
  return reading.notDetected ? `<${plainNumber(reading.value)}` : reading.raw;
}

const figureText = (figure: Outcome<Figure>): string | undefined =>
  figure.kind === "known" ? formatFigure(figure.value).text : undefined;

function noteOf(plan: RowPlan, visit: KeptVisit, assessment: Assessment): string {
  if (plan.slot) {
    const reading = visit.readings.asFound[plan.slot] ?? visit.readings.asLeft[plan.slot];
    const finding = findingFor(plan, "asFound", assessment);
    const own =
      finding?.figure && finding.figure.unit === reading?.unit ? formatFigure(finding.figure).uText : "";
    return [reading?.unit, own && `± ${own}`, reading?.scale && `scale ${reading.scale}`]
      .filter(Boolean)
      .join(", ")
      .replace(", ±", " ±");
  }
  const figures = assessment.figures;
  const figure = [figures.asFound, figures.asLeft]
    .map((one) => one[plan.figure!] as Outcome<Figure>)
    .find((one) => one.kind === "known");
  if (figure?.kind !== "known") return "";
  const { uText } = formatFigure(figure.value);
  return `${figure.value.unit}${uText ? ` ± ${uText}` : ""}`;
}

function limitOf(plan: RowPlan, assessment: Assessment, words: Messages): string {
  const finding = findingFor(plan, "asFound", assessment) ?? findingFor(plan, "asLeft", assessment);
  if (finding?.limit) return words.finding(finding).limit;
  const id = (plan.slot ?? plan.figure) as ExpectedId;
  const expected = assessment.expected.kind === "known" ? assessment.expected.value[id] : undefined;
  if (expected)
    return `${plainNumber(expected.low)}–${plainNumber(expected.high)} ${expected.unit}: this unit today`;
  return plan.slot === "deliveredTds" ? "no limit given" : "for information";
}
