import type { FieldValue } from "@tapside/records";

/** Answers by their own names, as fields of the visit. */
export const asAnswers = (
  answers: Readonly<Record<string, FieldValue>>,
): Readonly<Record<string, FieldValue>> =>
  Object.fromEntries(Object.entries(answers).map(([name, value]) => [`answer:${name}`, value]));
