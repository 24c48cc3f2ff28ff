import type { Assessment } from "@tapside/assessment";
import type { KeptVisit, Phase, Reading, SlotId, UnitFile } from "@tapside/records";
import { SLOTS } from "@tapside/records";
import type { Messages } from "@tapside/words";
import type { Block } from "./block.ts";

/** The last page: what the numbers stand on. */
export function howSure(
  file: UnitFile,
  visit: KeptVisit,
  assessment: Assessment,
  words: Messages,
  timeZone: string,
): Block[] {
  const readings = readingsOf(visit);
  const scales = [...new Set(readings.map((one) => one.reading.scale).filter(Boolean))];
  return [
    { kind: "heading", text: "What the numbers stand on" },
    {
      kind: "paragraph",
      text: "± is the expanded uncertainty U (k = 2) by first-order propagation (JCGM 100). Within and outside are stated only when the value clears its limit by U; else it is too close to say.",
    },
    {
      kind: "paragraph",
      text: `Membrane flow and salt passage are corrected to reference conditions in the form of ASTM D4516 with the temperature form ${assessment.temperatureForm}, against this element when new.`,
    },
    {
      kind: "paragraph",
      text:
        scales.length > 0
          ? `Dissolved solids are as the meter shows them on the scale ${scales.join(", ")}.`
          : "No scale of dissolved solids was written down.",
    },
    {
      kind: "list",
      title: "Readings as taken",
      items: readings.map((one) => readingLine(one, file, words, timeZone)),
    },
    { kind: "list", title: "Not read", items: notRead(file, assessment, words) },
    { kind: "list", title: "Instruments", items: instrumentLines(file, visit, readings) },
    { kind: "list", title: "Sources of limits", items: limitLines(assessment, words) },
    { kind: "paragraph", text: words.localCode, quiet: true },
  ];
}

interface Taken {
  readonly phase: Phase;
  readonly slot: SlotId;
  readonly reading: Reading;
}

const readingsOf = (visit: KeptVisit): readonly Taken[] =>
  (["asFound", "asLeft"] as const).flatMap((phase) =>
    (Object.keys(SLOTS) as SlotId[]).flatMap((slot) => {
      const reading = visit.readings[phase][slot];
      return reading ? [{ phase, slot, reading }] : [];
    }),
  );

/** Where and when each was taken, as it was typed, and with what. */
function readingLine(taken: Taken, file: UnitFile, words: Messages, timeZone: string): string {
  const { phase, slot, reading } = taken;
  const amount = reading.value === null ? "photo only" : `${reading.raw} ${reading.unit}`;
  const instrument = reading.instrument && file.instruments.get(reading.instrument)?.name;
  return [
    `${words.slots[slot]}, ${words.phases[phase].toLowerCase()}: ${reading.notDetected ? "nothing seen, step " : ""}${amount}`,
    reading.volumeL && `for ${reading.volumeL} L`,
    reading.scale && `scale ${reading.scale}`,
    words.ports[reading.port].toLowerCase(),
    new Date(reading.at).toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit", timeZone }),
    instrument ?? "instrument not named",
    reading.doubtful && "doubtful, not used",
  ]
    .filter(Boolean)
    .join(", ");
}

function notRead(file: UnitFile, assessment: Assessment, words: Messages): string[] {
  const absent = (file.unit.portsAbsent ?? []).map((port) => `${words.ports[port]}: not fitted on this unit`);
  const passedOver = assessment.toRead.map(
    ({ slot, phase }) => `${words.slots[slot]}, ${words.phases[phase].toLowerCase()}: not taken`,
  );
  return [...absent, ...new Set(passedOver)];
}

function instrumentLines(file: UnitFile, visit: KeptVisit, readings: readonly Taken[]): string[] {
  const used = new Set(readings.map((one) => one.reading.instrument));
  const lines = [...file.instruments.values()]
    .filter((one) => used.has(one.id))
    .map(
      (one) =>
        `${one.name}: ${one.unit}${one.scale ? `, scale ${one.scale}` : ""}; last checked ${one.lastCheckedOn ?? "not known"}${isAfter(one.lastCheckedOn, visit) ? ", after this visit" : ""}`,
    );
  const unnamed = readings.some((one) => !one.reading.instrument);
  return unnamed
    ? [...lines, "Where no instrument is named, accuracies usual for its kind were taken."]
    : lines;
}

const limitLines = (assessment: Assessment, words: Messages): string[] => [
  ...new Set(
    assessment.findings
      .filter((one) => one.limit)
      .map((one) => words.finding(one))
      .map((text) => `${text.title}: ${text.limit}`),
  ),
];

const isAfter = (day: string | undefined, visit: KeptVisit): boolean =>
  day !== undefined && visit.startedAt !== undefined && day > visit.startedAt.slice(0, 10);
