import type { Messages } from "../messages.ts";
import { finding } from "./findings.ts";
import * as names from "./names.ts";
import { question } from "./questions.ts";
import { refusal } from "./refusals.ts";
import { caution, taskTitle, taskWhy } from "./tasks.ts";

/** English. */
export const en: Messages = {
  language: "en",
  phases: names.phases,
  visitKinds: names.visitKinds,
  slots: names.slots,
  ports: names.ports,
  roles: names.roles,
  appliances: names.appliances,
  verdicts: names.verdicts,
  doesNotTestFor:
    "Does not test for microbes, lead, nitrate or anything else not listed. Low dissolved solids do not show safe water. Not for dialysis, infants' feeds or humidifiers.",
  localCode:
    "Local code and the appliance manuals govern. Pressure above the plate, backflow devices and mains wiring are work for licensed people.",
  finding,
  question,
  taskTitle,
  taskWhy,
  caution,
  missingName: names.missingName,
  missing: ({ missing }) =>
    `cannot tell, because ${names.listed(missing.map(names.missingName))} ${missing.length > 1 ? "are" : "is"} missing`,
  refusal,
  unit: names.unit,
  quantity: names.quantity,
  source: names.source,
  rule: names.rule,
};
