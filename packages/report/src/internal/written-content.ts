import type { RecordContent } from "../block.ts";
import { type Draws, writtenFor } from "./written-for.ts";

export interface WrittenContent {
  readonly content: RecordContent;
  /** Words that a print has to write otherwise, as it writes them, each once. */
  readonly otherwise: readonly string[];
}

/** What is drawn of a record, in signs the font has. Its data stays as it is. */
export function writtenContent(content: RecordContent, draws: Draws): WrittenContent {
  const otherwise = new Set<string>();
  const word = (text: string) => {
    const written = writtenFor(text, draws);
    if (written !== text.normalize("NFC")) otherwise.add(written);
    return written;
  };
  const all = <T>(value: T): T => {
    if (typeof value === "string") return value.replace(/[^\s,.;:()]+/g, word) as T;
    if (Array.isArray(value)) return value.map(all) as T;
    if (value === null || typeof value !== "object") return value;
    return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, all(part)])) as T;
  };
  const { title, subtitle, aside, blocks } = content;
  return { content: { ...content, ...all({ title, subtitle, aside, blocks }) }, otherwise: [...otherwise] };
}
