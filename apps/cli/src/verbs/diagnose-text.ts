import { type CauseId, type Step, TESTS } from "@tapside/diagnosis";
import type { Messages } from "@tapside/words";
import { causesInLanguage } from "@tapside/words/causes";
import type { CliIo } from "../command-verb.ts";
import { bookWordsIn } from "../words/book-words.ts";
import type { diagnosisOf } from "./diagnose.ts";

type Diagnosis = Awaited<ReturnType<typeof diagnosisOf>>;

/** A diagnosis for the technician. Odds are for the technician, never for the owner's record. */
export function printDiagnosis(unit: string, diagnosis: Diagnosis, words: Messages, io: CliIo): void {
  const says = bookWordsIn(words.language);
  const cause = causesInLanguage(words.language);
  const list = (ids: readonly CauseId[]) => ids.map((id) => cause.causes[id]).join(", ");
  io.print(says.mostLikely(unit));
  for (const line of oddsLines(diagnosis, words)) io.print(line);
  if (diagnosis.nothingIKnowExplainsThis) io.print(says.unexplained);
  io.print(nextLine(diagnosis.step, words));
  for (const line of meaningLines(diagnosis, words)) io.print(line);
  for (const repair of diagnosis.plan.steps) {
    const bring = repair.parts.map((part) => cause.parts[part]).join(", ") || says.noPart;
    const named = cause.causes[repair.cause];
    io.print(`> ${says.repair(named, bring, cause.minutes(repair.minutes), list(repair.first))}`);
    for (const caution of repair.cautions) io.print(`  ! ${cause.cautions[caution]}`);
    io.print(`  ${says.measureAgain(repair.measureAgain.map((test) => cause.tests[test]).join(", "))}`);
  }
  if (diagnosis.plan.steps.length > 0) io.print(words.localCode);
}

/** The likeliest causes with what speaks for and against each, and how large it is. */
function oddsLines({ causes }: Diagnosis, { language }: Messages): readonly string[] {
  const says = bookWordsIn(language);
  const { causes: names, signs, percent, grade, measure } = causesInLanguage(language);
  return causes.flatMap(({ cause, probability, evidence, size }) => {
    const side = (name: string, positive: boolean) => {
      const speaks = evidence.filter(({ shift }) => Math.abs(shift) >= 0.5 && shift > 0 === positive);
      return speaks.length > 0 ? `; ${name}: ${speaks.map(({ sign }) => signs[sign]).join(", ")}` : "";
    };
    const odds = `  ${percent(probability)}  ${names[cause]}${side(says.speaksFor, true)}${side(says.speaksAgainst, false)}`;
    if (!size) return [odds];
    const sizes = [grade(size.share, size.uShare), ...size.measures.map(measure)].join(", ");
    return [odds, `        ${says.howLarge(sizes)}`];
  });
}

function nextLine(step: Step, { language }: Messages): string {
  const says = bookWordsIn(language);
  const { causes, tests, minutes } = causesInLanguage(language);
  switch (step.kind) {
    case "test":
      return says.nextTest(tests[step.proposal.test], minutes(step.proposal.minutes));
    case "repair":
      return says.nextRepair(causes[step.cause], step.sure);
    case "sound":
      return says.nextNothing;
    case "notSeparable":
      return says.notSeparable(step.causes.map((id) => causes[id]).join(", "));
  }
}

/** What the likeliest answers of the next test would mean. */
function meaningLines({ step, meanings }: Diagnosis, { language }: Messages): readonly string[] {
  if (step.kind !== "test") return [];
  const says = bookWordsIn(language);
  const { causes, percent, signText } = causesInLanguage(language);
  return meanings
    .slice(0, 4)
    .map(
      ({ shows, probability, cause }) =>
        `  ${says.near(signText(TESTS[step.proposal.test].signs[0], shows, 2), percent(probability), causes[cause])}`,
    );
}
