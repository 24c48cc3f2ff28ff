import type { Assessment, Finding } from "@tapside/assessment";
import { formatFigure, type Messages } from "@tapside/words";
import type { Block } from "./block.ts";

/** Each finding that is not simply within, in order of consequence: how sure, what, limit and source, why, what to do. */
export function findingList(assessment: Assessment, words: Messages): Block[] {
  const items = assessment.findings.filter(isWorthSaying).map((one) => findingLine(one, words));
  return [
    {
      kind: "list",
      title: "Findings",
      items: items.length > 0 ? items : ["Everything that could be judged is within its limit."],
    },
    {
      kind: "list",
      title: "Readings that were questioned",
      items: assessment.questions.map((one) => words.question(one)),
    },
  ];
}

const isWorthSaying = (one: Finding): boolean =>
  one.verdict !== "within" && (one.verdict !== "information" || one.consequence > 10);

/** What an owner is told about certainty: three words, never odds. */
function howSure(finding: Finding): string {
  if (finding.verdict === "tooClose" || finding.verdict === "cannotTell") return "Not confirmed: ";
  return finding.verdict === "outside" ? "Found: " : "";
}

function findingLine(finding: Finding, words: Messages): string {
  const text = words.finding(finding);
  const phase = words.phases[finding.phase].toLowerCase();
  const pattern = finding.detail?.pattern ? "most likely: " : "";
  return [
    `${howSure(finding)}${text.title} (${phase}): ${text.verdict}${numberOf(finding)}`,
    text.limit && `limit ${text.limit}`,
    text.reason && `${pattern}${text.reason}`,
    finding.action && `to do: ${lowerFirst(words.taskTitle(finding.action))}`,
  ]
    .filter(Boolean)
    .join("; ");
}

function numberOf({ figure }: Finding): string {
  if (!figure) return "";
  const { text, uText } = formatFigure(figure);
  return ` ${text}${uText ? ` ± ${uText}` : ""} ${figure.unit}`;
}

export const lowerFirst = (text: string): string => text.slice(0, 1).toLowerCase() + text.slice(1);
