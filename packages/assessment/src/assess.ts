import type { Outcome } from "@tapside/quantities";
import type { UnitFile } from "@tapside/records";
import type { Assessment, Context, Figures, Finding } from "./assessment.ts";
import { assumptionsOf } from "./assumptions.ts";
import { dueItems } from "./due.ts";
import { expectedToday } from "./expected.ts";
import { feedWaterReadings } from "./feed-water.ts";
import { figuresOf } from "./figures.ts";
import { findingsOf } from "./findings.ts";
import { temperatureFormOf } from "./from-records.ts";
import { finiteRefusal } from "./internal/finite.ts";
import type { Visit } from "./internal/parts-in-service.ts";
import { lifeOf } from "./life.ts";
import { questionsOf } from "./questions.ts";
import { standsOn } from "./stands-on.ts";
import { tasksOf } from "./tasks.ts";
import { toRead } from "./to-read.ts";
import { quickWater } from "./water-judged.ts";

/**
 * A visit judged: same records and context in, same judgement out. A visit that is not in the file is judged as one with nothing read.
 */
export function assess(file: UnitFile, visitId: string, context: Context): Assessment {
  const visit = file.visits.find((one) => one.id === visitId) ?? nothingRead(visitId, file);
  const figures = {
    asFound: plain(figuresOf(file, visit, "asFound", context)),
    asLeft: plain(figuresOf(file, visit, "asLeft", context)),
  };
  const findings = [
    ...findingsOf(file, visit, "asFound", context, figures.asFound),
    ...findingsOf(file, visit, "asLeft", context, figures.asLeft),
  ].sort(byConsequence);
  const due = dueItems(file, visit, context.asOf);
  const tasks = tasksOf(file, visit, findings, due);
  return {
    version: 1,
    unit: file.unit.id,
    visit: visit.id,
    asOf: context.asOf,
    temperatureForm: temperatureFormOf(file, context),
    figures,
    expected: expectedToday(file, visit, context),
    findings,
    questions: questionsOf(file, visit),
    tasks,
    due,
    life: lifeOf(file, visit, context),
    assumed: assumptionsOf(file, context),
    standsOn: standsOn(file, visit),
    toRead: toRead(file, visit, tasks),
    water: quickWater(feedWaterReadings(visit, file)),
  };
}

const plain = (figures: Figures): Figures =>
  Object.fromEntries(
    Object.entries(figures).map(([name, one]) => [name, finiteRefusal(one as Outcome<unknown>)]),
  ) as unknown as Figures;

const byConsequence = (a: Finding, b: Finding): number =>
  b.consequence - a.consequence || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

const nothingRead = (id: string, file: UnitFile): Visit => ({
  id,
  unit: file.unit.id,
  readings: { asFound: {}, asLeft: {} },
  answers: {},
  exceptions: {},
  work: {},
  photos: {},
  skipped: [],
});
