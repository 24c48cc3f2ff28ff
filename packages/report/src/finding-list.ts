import type { Assessment, Finding } from "@tapside/assessment";
import { formatFigure, type Messages } from "@tapside/words";
import type { Block } from "./block.ts";

/** Each finding that is not simply within, in order of consequence: how sure, what, limit and source, why, what to do. */
export function findingList(assessment: Assessment, words: Messages): Block[] {
  const items = assessment.findings.filter(isWorthSaying).map((one) => findingLine(one, words));
  return [
    {
      kind: "list",
      title: words.record.titles.findings,
      items: items.length > 0 ? items : [words.record.says.allWithin],
    },
    {
      kind: "list",
      title: words.record.titles.questioned,
      items: assessment.questions.map((one) => words.question(one)),
    },
  ];
}

/** Needs nobody could tell stand beside the water; here they would only repeat what was not read. */
const isWorthSaying = (one: Finding): boolean =>
  one.id !== "needsOpen" &&
  one.verdict !== "within" &&
  (one.verdict !== "information" || one.consequence > 10);

/** What an owner is told about certainty: three words, never odds. */
function howSure(finding: Finding, { record: { says } }: Messages): string {
  if (finding.verdict === "tooClose" || finding.verdict === "cannotTell") return says.notConfirmed;
  return finding.verdict === "outside" ? says.found : "";
}

function findingLine(finding: Finding, words: Messages): string {
  const text = words.finding(finding);
  const phase = words.phases[finding.phase].toLowerCase();
  const pattern = finding.detail?.pattern ? words.record.says.mostLikely : "";
  return [
    `${howSure(finding, words)}${text.title} (${phase}): ${text.verdict}${numberOf(finding, words)}`,
    text.limit && words.record.limit(text.limit),
    text.reason && `${pattern}${text.reason}`,
    finding.action && words.record.toDo(lowerFirst(words.taskTitle(finding.action))),
  ]
    .filter(Boolean)
    .join("; ");
}

function numberOf({ figure }: Finding, words: Messages): string {
  if (!figure) return "";
  const { text, uText } = formatFigure(figure, words.decimalSign);
  return ` ${text}${uText ? ` ± ${uText}` : ""} ${words.unit(figure.unit)}`;
}

export const lowerFirst = (text: string): string => text.slice(0, 1).toLowerCase() + text.slice(1);
