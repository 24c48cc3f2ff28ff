import type { SlotId } from "@tapside/records";
import { messages } from "../words/messages.ts";
import type { Step } from "./steps.ts";
import { visitWords } from "./words.ts";

/** A step in a few words, for the next key and the overview. */
export function stepTitle(step: Step): string {
  if (step.reading) return slotTitle(step.reading.slot);
  if (step.id.startsWith("work:")) return taskTitle(step.id.slice("work:".length));
  return visitWords.titles[step.id] ?? step.id;
}

export const slotTitle = (slot: SlotId): string => messages.slots[slot];

export const taskTitle = (task: string): string => messages.taskTitle(task);
