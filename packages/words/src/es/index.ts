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
import { DECIMAL_SIGN } from "./number.ts";
import { inspection, openPoint, settledPoint } from "./points.ts";
import { question } from "./questions.ts";
import { record } from "./record.ts";
import { refusal } from "./refusals.ts";
import { caution, taskTitle, taskWhy } from "./tasks.ts";
import { visit } from "./visit.ts";
import { water } from "./water.ts";

export const es: Messages = {
  language: "es",
  decimalSign: DECIMAL_SIGN,
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
    "Medido frente a los límites nombrados, en este momento y en estas llaves. No analiza microbios, plomo ni nitrato. Pocos sólidos disueltos no demuestran que el agua sea segura.",
  localCode: "Rigen el código local, el manual del aparato y la práctica con licencia.",
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
