import type { Messages } from "../messages.ts";
import { causeNames } from "./cause-names.ts";
import { claim } from "./claim.ts";
import { dueReason } from "./due.ts";
import { finding } from "./findings.ts";
import { life } from "./life.ts";
import {
  appliances,
  missing,
  missingName,
  phases,
  ports,
  quantity,
  roles,
  rule,
  slots,
  source,
  unit,
  verdicts,
  visitKinds,
} from "./names.ts";
import { inspection, openPoint, settledPoint } from "./points.ts";
import { question } from "./questions.ts";
import { record } from "./record.ts";
import { refusal } from "./refusals.ts";
import { caution, taskTitle, taskWhy } from "./tasks.ts";
import { visit } from "./visit.ts";
import { water } from "./water.ts";

export const en: Messages = {
  language: "en",
  decimalSign: ".",
  record,
  visit,
  claim,
  water,
  phases,
  visitKinds,
  slots,
  ports,
  roles,
  appliances,
  verdicts,
  causeNames,
  doesNotTestFor:
    "Measured against the limits named, at this time and these taps. Does not test for microbes, lead or nitrate. Low dissolved solids do not show safe water.",
  localCode: "Local code, the appliance's manual and licensed practice govern.",
  finding,
  life,
  question,
  inspection,
  openPoint,
  settledPoint,
  taskTitle,
  taskWhy,
  caution,
  dueReason,
  missingName,
  missing,
  refusal,
  unit,
  quantity,
  source,
  rule,
};
