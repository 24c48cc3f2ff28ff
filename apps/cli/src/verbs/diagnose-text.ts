import { type CauseId, type Step, TESTS } from "@tapside/diagnosis";
import { en } from "@tapside/words/en";
import { causesEn } from "@tapside/words/en/causes";
import type { CliIo } from "../command-verb.ts";
import type { diagnosisOf } from "./diagnose.ts";

type Diagnosis = Awaited<ReturnType<typeof diagnosisOf>>;

const { causes, tests, signs, parts, cautions, minutes, percent, signText, grade, measure } = causesEn;
const causeList = (ids: readonly CauseId[]): string => ids.map((id) => causes[id]).join(", ");

const STEP: { readonly [K in Step["kind"]]: (step: Extract<Step, { readonly kind: K }>) => string } = {
  test: ({ proposal }) => `Next test: ${tests[proposal.test]}, ${minutes(proposal.minutes)}`,
  repair: ({ cause, sure }) =>
    `Next: put right: ${causes[cause]}${sure ? "" : " (the quickest way to know)"}, then measure again`,
  sound: () => "Next: nothing. No cause I know is at work",
  notSeparable: (step) => `Next: no reading here separates ${causeList(step.causes)}`,
};

/** A diagnosis for the technician. Odds are for the technician, never for the owner's record. */
export function printDiagnosis(unit: string, diagnosis: Diagnosis, io: CliIo): void {
  io.print(`${unit}: most likely (from the model, not from field counts)`);
  for (const { cause, probability, evidence, size } of diagnosis.causes) {
    const speaks = evidence.filter(({ shift }) => Math.abs(shift) >= 0.5);
    const side = (name: string, positive: boolean) => {
      const names = speaks.filter(({ shift }) => shift > 0 === positive).map(({ sign }) => signs[sign]);
      return names.length > 0 ? `; ${name}: ${names.join(", ")}` : "";
    };
    io.print(`  ${percent(probability)}  ${causes[cause]}${side("for", true)}${side("against", false)}`);
    const sizes = size?.measures.map(measure) ?? [];
    if (size) io.print(`        how large: ${[grade(size.share, size.uShare), ...sizes].join(", ")}`);
  }
  if (diagnosis.nothingIKnowExplainsThis)
    io.print("Nothing I know explains these readings: read them again.");
  io.print((STEP[diagnosis.step.kind] as (step: Step) => string)(diagnosis.step));
  const { step } = diagnosis;
  if (step.kind === "test")
    for (const { shows, probability, cause } of diagnosis.meanings.slice(0, 4))
      io.print(
        `  near ${signText(TESTS[step.proposal.test].signs[0], shows, 2)} (${percent(probability)}): ${causes[cause]}`,
      );
  for (const repair of diagnosis.plan.steps) {
    const first = repair.first.length > 0 ? `; first put right or rule out: ${causeList(repair.first)}` : "";
    const bring = repair.parts.map((part) => parts[part]).join(", ");
    io.print(`> ${causes[repair.cause]}: ${bring || "no part"}, ${minutes(repair.minutes)}${first}`);
    for (const caution of repair.cautions) io.print(`  ! ${cautions[caution]}`);
    io.print(`  measure again: ${repair.measureAgain.map((test) => tests[test]).join(", ")}`);
  }
  if (diagnosis.plan.steps.length > 0) io.print(en.localCode);
}
