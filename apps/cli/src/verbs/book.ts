import { formatFigure } from "@tapside/words";
import type { CommandVerb } from "../command-verb.ts";
import { calledVerb } from "./book-called.ts";
import { claimVerb, stickersVerb } from "./book-claim.ts";
import { calendarVerb, dueVerb, likelyVerb, monthVerb, vanVerb } from "./book-due.ts";
import { openVisit } from "./book-file.ts";
import { kitchenCardVerb, kitchenPageVerb } from "./book-kitchen.ts";
import { exportPartsVerb, exportWorkVerb, importVerb } from "./book-list.ts";
import { metersVerb, neighboursVerb } from "./book-meters.ts";
import { exportReadingsVerb } from "./book-readings.ts";
import { reportVerb } from "./book-report.ts";
import { scoreVerb } from "./book-score.ts";
import { sensorVerb, useVerb } from "./book-sensor.ts";
import { verifyVerb } from "./book-verify.ts";

const assessVerb: CommandVerb = {
  summary: "judges a visit of an exported file",
  ways: ["FILE [--visit ID] [--language en|es] [--json]"],
  examples: [{ args: ["assess", "examples/one-visit.tapside.json"], prints: "outside" }],
  run(args, io) {
    const found = openVisit(args, io);
    if (!found) return 2;
    if (found.named["--json"]) {
      io.print(JSON.stringify(found.assessment));
      return 0;
    }
    const { words } = found;
    for (const finding of found.assessment.findings) {
      const text = words.finding(finding);
      const figure = finding.figure && formatFigure(finding.figure, words.decimalSign);
      const number = figure
        ? ` ${figure.text}${figure.uText ? ` ± ${figure.uText}` : ""} ${words.unit(finding.figure?.unit ?? "")}`
        : "";
      io.print(
        `${text.title} (${words.phases[finding.phase].toLowerCase()}): ${text.verdict}${number}${text.limit ? `; ${text.limit}` : ""}${text.reason ? `; ${text.reason}` : ""}`,
      );
    }
    for (const question of found.assessment.questions) io.print(`? ${words.question(question)}`);
    for (const task of found.assessment.tasks)
      io.print(`> ${words.taskTitle(task.id)} (${words.taskWhy(task)})`);
    return 0;
  },
};

/** Verbs that work on an exported book. */
export const bookVerbs: Readonly<Record<string, CommandVerb>> = {
  assess: assessVerb,
  report: reportVerb,
  verify: verifyVerb,
  "export readings": exportReadingsVerb,
  "export parts": exportPartsVerb,
  "export work": exportWorkVerb,
  due: dueVerb,
  calendar: calendarVerb,
  month: monthVerb,
  sensor: sensorVerb,
  use: useVerb,
  van: vanVerb,
  likely: likelyVerb,
  called: calledVerb,
  score: scoreVerb,
  neighbours: neighboursVerb,
  meters: metersVerb,
  import: importVerb,
  claim: claimVerb,
  "kitchen card": kitchenCardVerb,
  "kitchen page": kitchenPageVerb,
  stickers: stickersVerb,
};
