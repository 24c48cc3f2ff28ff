import type { KeptVisit, Reading, SlotId } from "@tapside/records";
import type { ClaimWords, Messages } from "@tapside/words";
import { inSign } from "@tapside/words";
import { dayOf } from "./day-of.ts";

/** The water as the first visit shown found it: what a warranty asks of the day of fitting. */
export function waterLines(first: KeptVisit | undefined, words: Messages): readonly string[] {
  if (!first) return [];
  const slots: readonly SlotId[] = [
    "feedTds",
    "feedTemperature",
    "hardness",
    "chlorineBefore",
    "chlorineAfter",
    "staticPressure",
    "beforeFilterPressure",
  ];
  const read = slots.flatMap((slot) => {
    const one = first.readings.asFound[slot] ?? first.readings.asLeft[slot];
    return one ? [reading(words, slot, one)] : [];
  });
  return read.length === 0 ? [] : [`${dayOf(first.startedAt)}, ${kindOf(first, words)}`, ...read];
}

/** One visit in a line: who, what was read as found and as left, what was done. */
export function visitLine(visit: KeptVisit, words: Messages): string {
  const read = (["asFound", "asLeft"] as const).flatMap((phase) => {
    const all = Object.entries(visit.readings[phase]).flatMap(([slot, one]) =>
      one.value === null ? [] : [reading(words, slot as SlotId, one)],
    );
    return all.length > 0 ? [`${words.phases[phase].toLowerCase()}: ${all.join("; ")}`] : [];
  });
  const done = Object.entries(visit.work)
    .filter(([, work]) => work.state === "done")
    .map(([task]) => words.taskTitle(task));
  const head = [dayOf(visit.startedAt), kindOf(visit, words), visit.technician].filter(Boolean).join(", ");
  return [head, ...read, done.length > 0 ? words.claim.done(done.join(", ")) : ""].filter(Boolean).join(". ");
}

/** When the unit was bypassed, who allowed it until when, and when it was seen again. */
export function bypassLines(visits: readonly KeptVisit[], says: ClaimWords): readonly string[] {
  return visits.flatMap((visit, i) => {
    if (visit.answers.inUse !== "bypassed") return [];
    const { bypass } = visit.answers;
    const kept = bypass?.decision === "keepBypassed";
    const next = visits[i + 1];
    const end = kept
      ? next
        ? says.seenAgain(dayOf(next.startedAt))
        : says.noLaterVisit
      : says.putInUseThatDay;
    return [
      [
        says.foundBypassed(dayOf(visit.startedAt)),
        bypass
          ? `${bypass.name}, ${bypass.role}: ${kept ? says.staysBypassed : says.putInUse}`
          : says.nobodyAsked,
        bypass?.until ? says.allowedUntil(bypass.until) : "",
        bypass?.seal ? says.seal(bypass.seal) : "",
        end,
      ]
        .filter(Boolean)
        .join("; "),
    ];
  });
}

function reading(words: Messages, slot: SlotId, one: Reading): string {
  const value = [inSign(one.raw, words.decimalSign), words.unit(one.unit), one.scale]
    .filter(Boolean)
    .join(" ");
  return [
    words.slots[slot],
    one.notDetected ? words.claim.notDetectedAt(value) : value,
    one.volumeL !== undefined ? words.claim.inVolume(one.volumeL) : "",
  ]
    .filter(Boolean)
    .join(" ");
}

const kindOf = (visit: KeptVisit, words: Messages): string =>
  (words.visitKinds as Readonly<Record<string, string>>)[visit.kind ?? "annual"] ?? visit.kind ?? "";
