import type { Assessment, Verdict } from "@tapside/assessment";
import type { KeptVisit, VisitKind } from "@tapside/records";
import type { Messages } from "@tapside/words";
import type { Block } from "./block.ts";
import { lowerFirst } from "./finding-list.ts";

/** One line that says what was done, one for what is outside and what could not be said. */
export function visitSummary(visit: KeptVisit, assessment: Assessment, words: Messages): Block[] {
  const rest = (["outside", "tooClose", "cannotTell"] as const)
    .map((verdict) => [words.verdicts[verdict], titlesOf(verdict, visit, assessment, words)] as const)
    .filter(([, titles]) => titles.length > 0)
    .map(([verdict, titles]) => `${upperFirst(verdict)}: ${titles.join(", ")}.`);
  return [
    { kind: "paragraph", text: headline(visit, assessment, words), strong: true },
    ...(rest.length > 0 && !UNJUDGED.has(visit.kind ?? "annual")
      ? [{ kind: "paragraph", text: rest.join(" ") } as const]
      : []),
  ];
}

/** Kinds that are not about how the unit works. */
const UNJUDGED: ReadonlySet<VisitKind> = new Set(["survey", "noAccess", "removal", "shutDown"]);

function headline(visit: KeptVisit, assessment: Assessment, words: Messages): string {
  if (visit.answers.noAccess)
    return `${words.visitKinds.noAccess}: ${words.openPoint({ code: "noAccess" }).toLowerCase()}.`;
  if (visit.kind === "survey") return words.visit.says.surveyDone;
  if (visit.answers.inUse === "bypassed") return words.record.says.bypassed;
  const done = Object.entries(visit.work)
    .filter(([, work]) => work.state === "done")
    .map(([task]) => lowerFirst(words.taskTitle(task)));
  if (done.length > 0) return words.record.done(done.join(", "));
  return assessment.findings.some((one) => one.verdict === "outside")
    ? words.record.says.outsideFound
    : words.record.says.nothingChanged;
}

/** What is as left where that was judged, else as found. */
function titlesOf(verdict: Verdict, visit: KeptVisit, assessment: Assessment, words: Messages): string[] {
  const told = (phase: "asFound" | "asLeft", id: string) =>
    assessment.findings.some((one) => one.phase === phase && one.id === id && one.verdict !== "cannotTell");
  const last = assessment.findings.filter(
    (one) =>
      one.verdict === verdict &&
      !renewed(one.id, visit) &&
      (one.phase === "asLeft" ? verdict !== "cannotTell" : !told("asLeft", one.id)),
  );
  return [...new Set(last.map((one) => lowerFirst(words.finding(one).title)))];
}

/** Litres of a carbon that was changed since are no longer those of the unit. */
const renewed = (finding: string, { work }: KeptVisit): boolean =>
  finding === "carbonLeft" && work["replace:carbon"]?.state === "done";

const upperFirst = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
