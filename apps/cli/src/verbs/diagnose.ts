import {
  type Assumed,
  assumedWith,
  checkFit,
  countsFrom,
  countsInBook,
  diagnose,
  donorBank,
  type FileCase,
  fittedCauses,
  type Hour,
  hourOf,
  loadEngine,
  posterior,
  visitCase,
} from "@tapside/diagnosis";
import { type Kept, type KeptVisit, type Unit, unitFile } from "@tapside/records";
import type { Arguments } from "../arguments.ts";
import type { CliIo, CommandVerb } from "../command-verb.ts";
import { wordsAsked } from "../language-option.ts";
import { sentence } from "../sentence.ts";
import { bookWordsIn } from "../words/book-words.ts";
import { bookIn } from "./book-file.ts";
import { printSimulated } from "./diagnose-simulate.ts";
import { printDiagnosis } from "./diagnose-text.ts";

/** Figures a reader can use: no more digits than instruments give. */
const rounded = (_: string, value: unknown): unknown =>
  typeof value === "number" ? Number(value.toPrecision(4)) : value;

/** The newest open visit, else the newest. */
function visitToDiagnose(visits: readonly KeptVisit[], named: string | undefined): KeptVisit | undefined {
  if (named) return visits.find((visit) => visit.id === named);
  const newest = [...visits].sort((a, b) => ((a.startedAt ?? "") < (b.startedAt ?? "") ? 1 : -1));
  return newest.find((visit) => !visit.closed) ?? newest[0];
}

/** Most readings named for a cause, and most tests proposed. */
const [MOST_EVIDENCE, MOST_TESTS] = [6, 5];

/** Everything one visit's readings say: odds with evidence, sizes, the next test, the plan. */
export async function diagnosisOf({ scene, readings }: FileCase, hour: Hour, assumed: Assumed) {
  const engine = await loadEngine();
  const bank = donorBank(scene);
  const diagnosis = diagnose(engine, bank, readings, hour, assumed);
  const fit = checkFit(scene, posterior(engine, bank.expected, readings, assumed), readings, assumed);
  const fitted = fittedCauses(scene, fit, readings);
  return {
    ...diagnosis,
    causes: diagnosis.causes.map(({ cause, probability, evidence }) => ({
      cause,
      probability,
      evidence: evidence.slice(0, MOST_EVIDENCE),
      ...fitted[cause],
    })),
    nothingIKnowExplainsThis: fit.unexplained,
    chance: fit.chance,
    tests: diagnosis.tests.slice(0, MOST_TESTS),
  };
}

/** Counts of a file of their own: `{ "version": 1, "asOf": "2026-11-25", "found": { "coldWater": 3 }, "assumedWorth": 60 }`. */
function countsIn(text: string) {
  try {
    const data: unknown = JSON.parse(text);
    return data && typeof data === "object" ? countsFrom(data) : undefined;
  } catch {
    return undefined;
  }
}

async function diagnoseFile({ plain: [path], named }: Arguments, io: CliIo) {
  const words = wordsAsked(named["--language"], undefined, io);
  if (!words) return 2;
  const says = bookWordsIn(words.language);
  const book = bookIn(path, io, words);
  if (!book) return 2;
  const visit = visitToDiagnose([...book.visit.values()], named["--visit"]);
  const file = visit?.unit ? unitFile(book, visit.unit) : undefined;
  if (!visit || !file) {
    io.complain(says.noSuchVisit);
    return 2;
  }
  const found = visitCase({ file, visit });
  if (found.kind !== "known") {
    io.complain(sentence(found, words));
    return 1;
  }
  const counts = named["--counts"]
    ? countsIn(io.readText(named["--counts"]))
    : countsInBook(book.causeCounts);
  if (named["--counts"] && !counts) {
    io.complain(says.noCounts);
    return 2;
  }
  const diagnosis = await diagnosisOf(found.value, hourOf({ file, visit }), assumedWith(counts));
  const unit: Kept<Unit> = file.unit;
  if (named["--json"])
    io.print(
      JSON.stringify(
        {
          unit: unit.name,
          visit: visit.id,
          countsVersion: counts?.version,
          readings: found.value.readings,
          ...diagnosis,
        },
        rounded,
      ),
    );
  else printDiagnosis(unit.name ?? unit.id, diagnosis, words, io);
  return 0;
}

/** Odds over causes, the next test and the repair plan of a visit; or the scores on simulated visits. */
export const diagnoseVerb: CommandVerb = {
  summary: "what is most likely wrong at a visit, and the next test",
  ways: [
    "FILE [--visit ID] [--counts FILE] [--language en|es] [--json]",
    "--simulate N --seed S [--altered]",
  ],
  examples: [{ args: ["diagnose", "examples/one-visit.tapside.json"], prints: "Next" }],
  run: (args, io) => (args.named["--simulate"] ? printSimulated(args.named, io) : diagnoseFile(args, io)),
};
