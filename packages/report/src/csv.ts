import type { KeptVisit, Phase, Reading, UnitFile } from "@tapside/records";

const COLUMNS = [
  "site",
  "unit",
  "visit",
  "visit_kind",
  "phase",
  "slot",
  "raw",
  "value",
  "unit_of_value",
  "scale",
  "cup_L",
  "not_detected",
  "doubtful",
  "port",
  "instrument",
  "at",
] as const;

type Row = Readonly<Record<(typeof COLUMNS)[number], string | number | boolean | null | undefined>>;

/** Every reading of these units, one a line, exactly as typed and as understood. Quotes as in RFC 4180. */
export function readingsCsv(files: readonly UnitFile[]): string {
  const rows = files.flatMap((file) => file.visits.flatMap((visit) => rowsOf(file, visit)));
  const lines = rows.map((row) => COLUMNS.map((column) => quoted(row[column])).join(","));
  return `${[COLUMNS.join(","), ...lines].join("\n")}\n`;
}

const rowsOf = (file: UnitFile, visit: KeptVisit): readonly Row[] =>
  (["asFound", "asLeft"] as const).flatMap((phase) =>
    Object.entries(visit.readings[phase])
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([slot, reading]) => rowOf(file, visit, phase, slot, reading)),
  );

const rowOf = (file: UnitFile, visit: KeptVisit, phase: Phase, slot: string, reading: Reading): Row => ({
  site: file.site.name,
  unit: file.unit.name,
  visit: visit.id,
  visit_kind: visit.kind,
  phase,
  slot,
  raw: reading.raw,
  value: reading.value,
  unit_of_value: reading.unit,
  scale: reading.scale,
  cup_L: reading.volumeL,
  not_detected: reading.notDetected ? "yes" : "no",
  doubtful: reading.doubtful ? "yes" : "no",
  port: reading.port,
  instrument: reading.instrument && (file.instruments.get(reading.instrument)?.name ?? reading.instrument),
  at: reading.at,
});

function quoted(value: Row[keyof Row]): string {
  const text = String(value ?? "");
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
