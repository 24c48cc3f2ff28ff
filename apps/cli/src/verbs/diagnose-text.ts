import type { CauseId, Step } from "@tapside/diagnosis";
import type { CliIo } from "../command-verb.ts";
import type { diagnosisOf } from "./diagnose.ts";

type Diagnosis = Awaited<ReturnType<typeof diagnosisOf>>;

/** "preFilterClogged" as "pre filter clogged". */
const plain = (id: string): string => id.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
const percent = (p: number): string =>
  p > 0.99 ? "over 99 %" : p < 0.01 ? "under 1 %" : `${Math.round(100 * p)} %`;
const list = (ids: readonly string[]): string => ids.map(plain).join(", ");

const STEP: { readonly [K in Step["kind"]]: (step: Extract<Step, { readonly kind: K }>) => string } = {
  test: ({ proposal }) => `Next test: ${plain(proposal.test)}, about ${proposal.minutes} min`,
  repair: ({ cause, sure }) =>
    `Next: put right ${plain(cause)}${sure ? "" : " (the quickest way to know)"}, then measure again`,
  sound: () => "Next: nothing. No cause I know is at work",
  notSeparable: ({ causes }) => `Next: no reading here separates ${list(causes)}`,
};

/** A diagnosis for the technician. Odds are for the technician, never for the owner's record. */
export function printDiagnosis(unit: string, diagnosis: Diagnosis, io: CliIo): void {
  io.print(`${unit}: most likely (from the model, not from field counts)`);
  for (const { cause, probability, evidence } of diagnosis.causes) {
    const speaks = evidence.filter(({ shift }) => Math.abs(shift) >= 0.5);
    const side = (name: string, positive: boolean) => {
      const signs = speaks.filter(({ shift }) => shift > 0 === positive).map(({ sign }) => sign);
      return signs.length > 0 ? `; ${name}: ${list(signs)}` : "";
    };
    io.print(`  ${percent(probability)}  ${plain(cause)}${side("for", true)}${side("against", false)}`);
  }
  if (diagnosis.nothingIKnowExplainsThis)
    io.print("Nothing I know explains these readings: read them again.");
  io.print((STEP[diagnosis.step.kind] as (step: Step) => string)(diagnosis.step));
  for (const meaning of diagnosis.meanings?.slice(0, 4) ?? [])
    io.print(
      `  near ${Number(meaning.shows.toPrecision(2))} (${percent(meaning.probability)}): ${plain(meaning.cause satisfies CauseId)}`,
    );
  for (const step of diagnosis.plan.steps) {
    const first = step.first.length > 0 ? `; first: ${list(step.first)}` : "";
    io.print(`> ${plain(step.cause)}: ${list(step.parts) || "no part"}, ${step.minutes} min${first}`);
    io.print(
      `  mind: ${list(step.cautions) || "nothing special"}; measure again: ${list(step.measureAgain)}`,
    );
  }
}
