import type { Edit } from "../generator/unit-records.ts";

/** What the technician of the units written by hand carries, and whose book it is. */
export const INSTRUMENTS: readonly Edit[] = [
  {
    kind: "instrument",
    record: "demo:meter",
    day: "2023-11-01",
    fields: {
      name: "Meter 7",
      kind: "tds",
      unit: "ppm",
      scale: "NaCl",
      accuracyPercentOfReading: 2,
      resolution: 1,
      lastCheckedOn: "2026-11-02",
      usual: true,
    },
  },
  {
    kind: "instrument",
    record: "demo:gauge",
    day: "2023-11-01",
    fields: {
      name: "Gauge 2",
      kind: "pressure",
      unit: "psi",
      accuracyPercentOfFullScale: 0.7,
      fullScale: 100,
      resolution: 0.5,
      usual: true,
    },
  },
  { kind: "settings", record: "settings", day: "2023-11-01", fields: { technician: "J. Orme" } },
];
