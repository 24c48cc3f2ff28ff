import type { Key } from "./keypad.tsx";

const LONGEST = 7;

/** The text after a key: one decimal sign at most, no leading zeros. */
export function withKey(before: string, key: Key): string {
  if (key === "rubOut") return before.slice(0, -1);
  if (before.length >= LONGEST) return before;
  if (key === ".") return before.includes(".") ? before : `${before || "0"}.`;
  return before === "0" ? key : before + key;
}
