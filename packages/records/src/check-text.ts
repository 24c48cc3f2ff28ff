import { known, type Outcome, refused } from "@tapside/quantities";
import type { FieldValue } from "./change.ts";

/** Most texts of a book are plain, and a book holds tens of thousands. */
const PLAIN = /^[ -~]*$/;
const LONE_SURROGATE = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;

/**
 * Text that some later database would refuse or silently alter is refused here:
 * "text-has-nul", "text-has-half-character" (a lone surrogate).
 */
export function checkText(text: string): Outcome<string> {
  if (PLAIN.test(text)) return known(text);
  if (text.includes("\0")) return refused("text-has-nul", { position: text.indexOf("\0") });
  const lone = LONE_SURROGATE.exec(text);
  return lone ? refused("text-has-half-character", { position: lone.index }) : known(text);
}

/** The first refusal among all texts and names within a value; numbers that JSON cannot hold are refused too. */
export function checkValue(value: FieldValue): Outcome<FieldValue> {
  if (typeof value === "string") return checkText(value);
  if (typeof value === "number" && !Number.isFinite(value)) return refused("number-not-finite");
  if (typeof value !== "object" || value === null) return known(value);
  for (const [name, member] of Object.entries(value)) {
    const named = checkText(name);
    if (named.kind !== "known") return named;
    const held = checkValue(member);
    if (held.kind !== "known") return held;
  }
  return known(value);
}
