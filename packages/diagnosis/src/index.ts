export { type Advice, advise, type Step, SURE } from "./advise.ts";
export { answersOf, confirmedIn, repairedIn, type VisitOfUnit } from "./answers-of.ts";
export { type BeforeDriving, beforeDriving, type SaidByKitchen, worthSaying } from "./before-driving.ts";
export { caseFromFile, doubtOf, type FileCase, noteAnswers, noteOf } from "./case-from-file.ts";
export { CAUSE_IDS, CAUSES, type CauseId, COMPLAINTS, type Complaint } from "./causes.ts";
export { complaintOf } from "./complaint-of.ts";
export { countsFrom, countsInBook, USUAL_WORTH } from "./counts-in-book.ts";
export { type Diagnosis, diagnose } from "./diagnose.ts";
export { type DonorBank, donorBank } from "./donors.ts";
export type { ScorePlan } from "./drawn-case.ts";
export { type Engine, loadEngine } from "./engine.ts";
export { type Expectation, expectationOf } from "./expectation.ts";
export { type CauseFit, fitCauses } from "./fit-cause.ts";
export { type FittedCauses, fittedCauses } from "./fitted-causes.ts";
export { foundInBook, withFound } from "./found-in-book.ts";
export { type CompanyCounts, type Frequencies, frequencies } from "./frequencies.ts";
export { hourOf, SET_UP_IDS, TOOLS } from "./hour-of-visit.ts";
export { measuredAgain, mustMeasureAgain } from "./measured-again.ts";
export { checkFit, checkFitInSlices, type FitCheck } from "./misfit.ts";
export { type Hour, type Meaning, meaningsOf, minutesOf, nextTests, type TestProposal } from "./next-test.ts";
export { type CauseOdds, type Evidence, evidenceFor, type Odds, odds, type PairOdds } from "./odds.ts";
export { scoreOutside } from "./outside-faults.ts";
export { scorePolicies } from "./policy-scores.ts";
export { type Assumed, assumedWith, type Posterior, posterior, usualAssumed } from "./posterior.ts";
export {
  type Difficulty,
  type Practice,
  type PracticeEntry,
  plannerOn,
  practiceUnit,
  repairInPractice,
  takeTest,
} from "./practice.ts";
export { type Random, seededRandom } from "./random.ts";
export { type RepairPlan, type RepairStep, repairPlan } from "./repair-plan.ts";
export { type CautionId, type PartId, REPAIRS, type Repair } from "./repairs.ts";
export { type SaidAndFound, saidAndFound } from "./said-and-found.ts";
export { type SaidOfCause, saidCauses } from "./said-causes.ts";
export { type Said, saidToOwner } from "./said-to-owner.ts";
export type { Scene, Usual } from "./scene.ts";
export { sceneAfterRepairs } from "./scene-after-repairs.ts";
export { scoreAllTests, scorePairs } from "./scores.ts";
export { SEARCH } from "./search-answers.ts";
export { type Share, shareOf } from "./share-of.ts";
export { type Readings, SIGN_IDS, SIGNS, type SignId, type SignKind } from "./signs.ts";
export { type SimulatedCase, simulateCase } from "./simulate-case.ts";
export {
  type CauseSize,
  type Measure,
  type Measured,
  SIZE_KNOWN_WITHIN,
  sizeOfCause,
} from "./size-of-cause.ts";
export { slotToRead } from "./slot-of-sign.ts";
export {
  SET_UPS,
  type SetUpId,
  TEST_IDS,
  TESTS,
  type Test,
  type TestId,
  type Tool,
} from "./test-catalogue.ts";
export { phaseNow, repairedAnswers, testOwed, visitCase } from "./visit-case.ts";
export { partsForStops, type WantedPart } from "./wanted-over-stops.ts";
