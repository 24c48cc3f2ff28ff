import type { Line, Restrictor, restrictorMeasures } from "@tapside/reverse-osmosis";

/** What hangs there and how it is plumbed, as a technician finds it. */
export const foundEn = {
  restrictor: "Restrictor",
  restrictorHint: "what hangs in the drain line",
  kinds: {
    rated: "Rated flow",
    capillary: "Capillary",
    orifice: "Hole",
    measured: "Measured",
  } as Readonly<Record<Restrictor["kind"], string>>,
  kindHints: {
    rated: "as its label says",
    capillary: "fine tube, bore and length",
    orifice: "sharp edge, bore",
    measured: "cup and watch",
  } as Readonly<Record<Restrictor["kind"], string>>,
  laws: { laminar: "A fine tube", orifice: "A hole" },
  lawAsk: "Is it a fine tube or a hole? A tube slows in cold water, a hole hardly.",
  measures: {
    restrictorLPerH: "Drain flow",
    restrictorAtKPaGauge: "at pressure",
    restrictorAtC: "in water of",
    restrictorBoreMm: "Bore",
    restrictorLengthM: "Length",
  } as Readonly<Record<ReturnType<typeof restrictorMeasures>[number], string>>,
  notSaid: "Not said",
  plateStands: "Until then the nameplate's drain flow counts.",
  chooseKind:
    "Not said: the nameplate's drain flow counts. Press what hangs there; press it again to take it back.",
  passes: (flow: string, pressure: string) => `Passes about ${flow} at ${pressure} and 20\u00a0°C`,
  colder: (percent: number) =>
    percent > 0 ? `, ${percent}\u00a0% less at 5\u00a0°C.` : ", at 5\u00a0°C as much.",
  beyond: (reynolds: string) =>
    `Beyond its laminar range (Re ${reynolds}): its flow is told to ±\u00a020\u00a0%, and cold slows it less.`,
  lines: "Tubing",
  linesHint: "bores and lengths; may stay blank",
  lineNames: {
    feed: "Filters",
    permeate: "To tank",
    drain: "Drain",
    outlet: "From tank",
  } as Readonly<Record<Line, string>>,
  lineHints: {
    feed: "first gauge to membrane",
    permeate: "membrane to tank",
    drain: "behind the restrictor",
    outlet: "tank to appliance",
  } as Readonly<Record<Line, string>>,
  length: "Length",
  bore: "Bore",
  byDefault: "default",
  notCounted: "Without a length this line is not counted (default).",
  takes: (pressure: string) => `Takes about ${pressure} of 1 L/min at 20\u00a0°C.`,
  boreUsual: "Bore not measured: the usual one counts (default, walls vary).",
  allDefault: "not counted (default)",
  next: "Next",
  done: "Done",
  setUp: "Set-up",
};
