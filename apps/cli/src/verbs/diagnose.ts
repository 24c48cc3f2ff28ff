import {
  type Assumed,
  advise,
  caseFromFile,
  checkFit,
  countsFrom,
  countsInBook,
  donorBank,
  evidenceFor,
  frequencies,
  loadEngine,
  meaningsOf,
  posterior,
  type Readings,
  SIGN_IDS,
  usualAssumed,
} from "@tapside/diagnosis";
import { type Kept, type KeptVisit, type Unit, unitFile } from "@tapside/records";
import { type CliIo, type CommandVerb, options } from "../command-verb.ts";
import { sentence } from "../sentence.ts";
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

/** Everything one visit's readings say: odds with evidence, sizes, the next test, the plan. */
export async function diagnosisOf(
  scene: Parameters<typeof donorBank>[0],
  readings: Readings,
  assumed: Assumed = usualAssumed,
) {
  const engine = await loadEngine();
  const bank = donorBank(scene);
  const advice = advise(engine, bank, readings, {}, assumed);
  const fit = checkFit(scene, posterior(engine, bank.expected, readings, assumed), readings);
  const likely = advice.odds.causes.filter(({ probability }) => probability >= 0.02).slice(0, 5);
  const { step } = advice;
  const evidence = evidenceFor(
    likely.map(({ cause }) => cause),
    engine,
    bank.expected,
    readings,
    assumed,
  );
  return {
    causes: likely.map(({ cause, probability }, i) => ({
      cause,
      probability,
      evidence: evidence[i]?.slice(0, 6) ?? [],
      ...sizeOf(fit, cause, readings),
    })),
    two: advice.odds.two,
    pairs: advice.odds.pairs.filter(({ probability }) => probability >= 0.02),
    nothingIKnowExplainsThis: fit.unexplained,
    chance: fit.chance,
    step,
    ...(step.kind === "test" && {
      meanings: meaningsOf(step.proposal.test, engine, bank, readings, assumed),
    }),
    tests: advice.tests.slice(0, 5),
    plan: advice.plan,
  };
}

/** How large the cause would be, 0 mild to 1 severe, and what it would read beside what was read. */
function sizeOf(fit: ReturnType<typeof checkFit>, cause: string, readings: Readings) {
  const own = fit.fits.find((one) => one.causes.length === 1 && one.causes[0] === cause);
  const best = own ?? fit.fits.find((one) => (one.causes as readonly string[]).includes(cause));
  if (!best) return {};
  const at = (best.causes as readonly string[]).indexOf(cause);
  const beside = SIGN_IDS.filter((sign) => readings[sign] !== undefined).map((sign) => ({
    sign,
    read: readings[sign],
    wouldRead: best.wouldRead[sign],
  }));
  return { size: { share: best.shares[at], u: best.uShares[at] }, beside };
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

async function diagnoseFile(path: string | undefined, named: Readonly<Record<string, string>>, io: CliIo) {
  const book = bookIn(path, io);
  if (!book) return 2;
  const visit = visitToDiagnose([...book.visit.values()], named["--visit"]);
  const file = visit?.unit ? unitFile(book, visit.unit) : undefined;
  if (!visit || !file) {
    io.complain("There is no such visit with its unit in this file.");
    return 2;
  }
  const found = caseFromFile(file, visit.id);
  if (found.kind !== "known") {
    io.complain(sentence(found));
    return 1;
  }
  const counts = named["--counts"]
    ? countsIn(io.readText(named["--counts"]))
    : countsInBook(book.causeCounts);
  if (named["--counts"] && !counts) {
    io.complain("The file of counts has no version and counts in it.");
    return 2;
  }
  const assumed = { ...usualAssumed, frequencies: frequencies(counts) };
  const diagnosis = await diagnosisOf(found.value.scene, found.value.readings, assumed);
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
  else printDiagnosis(unit.name ?? unit.id, diagnosis, io);
  return 0;
}

/** Odds over causes, the next test and the repair plan of a visit; or the scores on simulated visits. */
export const diagnoseVerb: CommandVerb = {
  summary: "what is most likely wrong at a visit, and the next test",
  usage:
    "diagnose FILE [--visit ID] [--counts FILE] [--json]\n       diagnose --simulate N --seed S [--altered]",
  examples: [{ args: ["diagnose", "examples/one-visit.tapside.json"], prints: "Next" }],
  run(args, io) {
    const { plain, named } = options(args, ["--visit", "--simulate", "--seed", "--counts"]);
    return named["--simulate"] ? printSimulated(named, io) : diagnoseFile(plain[0], named, io);
  },
};
