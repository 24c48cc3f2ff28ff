import type { KitchenCall } from "@tapside/book";
import { messages } from "../words/messages.ts";
import { callWords as words } from "./words.ts";

/** What was said, a line each, in the language of this phone. */
export const linesOf = (call: KitchenCall): readonly string[] => [
  ...(call.full ? [words.saidFull] : []),
  ...call.items.map((item) => messages.visit.checks.complaint.items[item]!),
  ...(call.drain ? [words.saidDrain[call.drain]] : []),
  ...(call.tank ? [words.saidTank[call.tank]] : []),
  ...(call.alarm ? [`${messages.visit.checks.complaint.items.alarm}: ${call.alarm.trim()}`] : []),
  ...(call.words ? [messages.visit.inWords(call.words.trim())] : []),
];

/** The message in words, for whoever reads it without the app. */
export const sentencesOf = (call: KitchenCall): readonly string[] => [
  [words.unit(call.code).split(".")[0], call.name?.trim()].filter(Boolean).join(", "),
  `${linesOf(call).join("; ")}.`,
];
