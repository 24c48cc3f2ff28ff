import type { Assessment } from "@tapside/assessment";
import type { KeptVisit, Phase, Reading, SlotId, UnitFile } from "@tapside/records";
import { absentPorts, SLOTS } from "@tapside/records";
import { inSign, type Messages } from "@tapside/words";
import type { Block } from "./block.ts";

/** The last page: what the numbers stand on. */
export function howSure(
  file: UnitFile,
  visit: KeptVisit,
  assessment: Assessment,
  words: Messages,
  clock: Clock,
): Block[] {
  const { record } = words;
  const { titles, says } = record;
  const readings = readingsOf(visit);
  const scales = [...new Set(readings.map((one) => one.reading.scale).filter(Boolean))];
  return [
    { kind: "heading", text: titles.standOn },
    { kind: "paragraph", text: says.uncertainty },
    { kind: "paragraph", text: record.temperatureForm(assessment.temperatureForm) },
    { kind: "paragraph", text: scales.length > 0 ? record.scales(scales.join(", ")) : says.noScale },
    {
      kind: "list",
      title: titles.readings,
      items: readings.map((one) => readingLine(one, file, words, clock)),
    },
    { kind: "list", title: titles.notRead, items: notRead(file, assessment, words) },
    { kind: "list", title: titles.instruments, items: instrumentLines(file, visit, readings, words) },
    { kind: "list", title: titles.sources, items: limitLines(assessment, words) },
    {
      kind: "list",
      title: titles.assumed,
      items: record.assumptions(assessment.assumed),
    },
    { kind: "paragraph", text: words.localCode, quiet: true },
  ];
}

interface Clock {
  readonly timeZone: string;
  readonly issuedAt: string;
}

/** A reading stamped later than its record: a phone's clock was wrong, and the reader is told. */
const AHEAD_MS = 10 * 60 * 1000;

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

/** Where and when each was taken, with the digits that were typed, and with what. */
function readingLine(taken: Taken, file: UnitFile, words: Messages, { timeZone, issuedAt }: Clock): string {
  const { phase, slot, reading } = taken;
  const { record } = words;
  const read = `${inSign(reading.raw, words.decimalSign)} ${reading.unit}`;
  const amount =
    reading.value === null ? record.says.photoOnly : reading.notDetected ? record.nothingSeen(read) : read;
  const instrument = reading.instrument && file.instruments.get(reading.instrument)?.name;
  return [
    `${words.slots[slot]}, ${words.phases[phase].toLowerCase()}: ${amount}`,
    reading.volumeL && record.cup(reading.volumeL),
    reading.scale && record.scale(reading.scale),
    words.ports[reading.port].toLowerCase(),
    new Date(reading.at).toLocaleTimeString(record.locale, { hour: "2-digit", minute: "2-digit", timeZone }),
    instrument ?? record.says.instrumentNotNamed,
    reading.doubtful && record.says.doubtful,
    Date.parse(reading.at) - Date.parse(issuedAt) > AHEAD_MS && record.says.timeAhead,
  ]
    .filter(Boolean)
    .join(", ");
}

function notRead(file: UnitFile, assessment: Assessment, words: Messages): string[] {
  const absent = absentPorts(file.unit).map((port) => `${words.ports[port]}: ${words.record.says.notFitted}`);
  const passedOver = assessment.toRead.map(
    ({ slot, phase }) =>
      `${words.slots[slot]}, ${words.phases[phase].toLowerCase()}: ${words.record.says.notTaken}`,
  );
  return [...absent, ...new Set(passedOver)];
}

function instrumentLines(
  file: UnitFile,
  visit: KeptVisit,
  readings: readonly Taken[],
  { record }: Messages,
): string[] {
  const used = new Set(readings.map((one) => one.reading.instrument));
  const lines = [...file.instruments.values()]
    .filter((one) => used.has(one.id))
    .map((one) =>
      record.instrument(
        one.name ?? "",
        one.unit ?? "",
        one.kind === "tds" ? (one.scale ?? "") : "",
        one.lastCheckedOn ?? "",
        isAfter(one.lastCheckedOn, visit),
      ),
    );
  const unnamed = readings.some((one) => !one.reading.instrument);
  return unnamed ? [...lines, record.says.usualAccuracy] : lines;
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
