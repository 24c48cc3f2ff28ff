import { known, type Outcome, refused } from "@tapside/quantities";
import type { UnitFile } from "./book.ts";
import { canonicalJson } from "./canonical-json.ts";
import type { FieldValue } from "./change.ts";
import { sha256Hex } from "./sha256.ts";

export interface Frozen {
  readonly json: string;
  /** SHA-256 of `json`. */
  readonly mark: string;
}

/** Freezes the content of a service record: its canonical text and that text's mark. */
export function freeze(content: unknown): Frozen {
  const json = canonicalJson(content);
  return { json, mark: sha256Hex(json) };
}

/** The content of a frozen record, or "record-altered" when the text no longer has this mark. */
export function verifyRecord(frozen: Frozen): Outcome<FieldValue> {
  if (sha256Hex(frozen.json) !== frozen.mark) return refused("record-altered", { mark: frozen.mark });
  try {
    return known(JSON.parse(frozen.json) as FieldValue);
  } catch {
    return refused("record-broken", { mark: frozen.mark });
  }
}

/** Mark of everything a visit was judged from. Kept in the frozen content; compare with `inputsChangedSince`. */
export const inputsMark = (file: UnitFile, visitId: string): string =>
  sha256Hex(canonicalJson(inputsOf(file, visitId)));

/** Whether what the visit was judged from differs from what it was when `mark` was taken. */
export const inputsChangedSince = (mark: string, file: UnitFile, visitId: string): boolean =>
  inputsMark(file, visitId) !== mark;

/** Later visits and what they swapped do not bear on an earlier record, nor does ending the visit itself or a clock that still runs. */
function inputsOf(file: UnitFile, visitId: string) {
  const here = file.visits.findIndex((visit) => visit.id === visitId);
  const upTo = file.visits.slice(0, here + 1);
  const known = new Set(upTo.slice(0, -1).map((visit) => visit.id));
  return {
    altitudeM: file.site.altitudeM,
    unit: file.unit,
    appliances: file.appliances,
    instruments: [...file.instruments.values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
    parts: file.parts
      .filter((part) => !part.fittedVisit || known.has(part.fittedVisit))
      .map(({ removedOn, removedVisit, ...part }) =>
        removedVisit && !known.has(removedVisit) ? part : { ...part, removedOn, removedVisit },
      ),
    visits: upTo.map(({ closed: _closed, endedAt: _endedAt, timers: _timers, ...visit }) => visit),
  };
}
