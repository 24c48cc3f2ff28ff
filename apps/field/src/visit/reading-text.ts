import type { Reading } from "@tapside/records";
import { inSign } from "@tapside/words";
import { messages } from "../words/messages.ts";
import { visitWords as words } from "./words.ts";

/** A reading in a few words: number, unit, scale, and whether it is doubted. */
export function readingText(reading: Reading): string {
  if (reading.value === null) return words.photoPending;
  const number = `${reading.notDetected ? "<" : ""}${inSign(reading.raw, messages.decimalSign)} ${reading.unit}`;
  const cup =
    reading.unit === "s" && reading.volumeL
      ? `${inSign(String(reading.volumeL), messages.decimalSign)} L`
      : "";
  return [number, cup, reading.scale, reading.doubtful ? words.doubtful.toLowerCase() : ""]
    .filter(Boolean)
    .join(", ");
}
