import type { KeptVisit, UnitFile } from "@tapside/records";
import {
  cup,
  fileOf,
  N1,
  N2,
  N3,
  nothingSeen,
  ppm,
  type TypedReadings,
  visitOf,
} from "../../../assessment/src/testing/build.ts";
import * as judged from "../../../assessment/src/testing/trials.ts";

/*
 * Worked visits with readings rounded as a technician reads, computed with independent models of the same physics. The truth of each
 * stands beside it.
 */

const withVisit = (file: UnitFile, id: string, change: (visit: KeptVisit) => KeptVisit): UnitFile => ({
  ...file,
  visits: file.visits.map((visit) => (visit.id === id ? change(visit) : visit)),
});

const withAnswers = (file: UnitFile, answers: object): UnitFile =>
  withVisit(file, "today", (visit) => ({ ...visit, answers: { ...visit.answers, ...answers } }) as KeptVisit);

/** A filter clogged seven times its clean drop and a charge of 4 psi; the element is sound. */
export const ordinaryVisit = (): UnitFile => judged.ordinaryVisit();

/** An element oxidised behind spent carbon: A ×1.32, B ×4.2. */
export const tasteComplaint = (): UnitFile =>
  withAnswers(judged.tasteComplaint(), {
    "cause.complaint": "taste",
    "cause.throttledFlow": 13.2,
    "cause.throttledTds": 77,
  });

/** A check valve that leaks back; the charge was set to 9 psi. */
export const drainAllNight = (): UnitFile =>
  withVisit(withAnswers(judged.drainAllNight(), { "cause.complaint": "drainRuns" }), "new", (visit) => {
    const { at, port } = visit.readings.asFound.feedTemperature!;
    const airCharge = { raw: "9", value: 9, unit: "psi", port, at };
    return { ...visit, readings: { ...visit.readings, asFound: { ...visit.readings.asFound, airCharge } } };
  });

const carbonAndElement = [
  {
    role: "carbon",
    fittedOn: "2026-05-04",
    ratedLitres: 57_000,
    ratedChlorineMgPerL: 2,
    meterAtFittingM3: 20,
  },
  { role: "element", fittedOn: "2025-02-03" },
] as const;

function place(
  name: string,
  unit: Parameters<typeof fileOf>[1],
  read: { readonly new: TypedReadings; readonly last?: TypedReadings; readonly today: TypedReadings },
  answers: object,
  parts: Parameters<typeof fileOf>[2] = carbonAndElement,
): UnitFile {
  const file = fileOf(name, unit, parts, [
    visitOf("new", "commissioning", "2025-02-03", read.new),
    ...(read.last ? [visitOf("lastYear", "annual", "2026-02-04", read.last)] : []),
    visitOf("today", "callOut", "2026-11-25", read.today),
  ]);
  return withAnswers(file, answers);
}

/** The restrictor has fallen out: the drain passes 3.2 times as much. No gauge behind the filters; no static pressure, no chlorine. */
export const drainTooStrong = (): UnitFile =>
  place(
    "Osier Lane nursery",
    N2,
    {
      new: {
        feedTemperature: [16, "°C"],
        beforeFilterPressure: [4.5, "bar"],
        feedTds: ppm(280),
        permeateTds: ppm(10),
        permeateFlow: [334, "mL/min"],
        drainFlow: [775, "mL/min"],
      },
      last: {
        feedTemperature: [14, "°C"],
        beforeFilterPressure: [4.4, "bar"],
        feedTds: ppm(285),
        permeateTds: ppm(11),
        permeateFlow: cup(0.5, 101),
        drainFlow: cup(1, 79),
      },
      today: {
        permeateTds: ppm(12),
        drainFlow: cup(1, 27),
        feedTds: ppm(282),
        permeateFlow: cup(0.5, 119),
        beforeFilterPressure: [4.1, "bar"],
        feedTemperature: [15, "°C"],
      },
    },
    { "cause.complaint": "runsOut" },
  );

/** The bladder is pierced: 53 L, 40 psi, 2.0 L drawn leave 18 psi (3.0 L of gas where 14.2 L belong). No element reading but solids. */
export const runsOutAtOnce = (): UnitFile =>
  place(
    "Harrow Mill annexe",
    N3,
    {
      new: {
        feedTemperature: [14, "°C"],
        beforeFilterPressure: [4.2, "bar"],
        feedTds: ppm(180),
        permeateTds: ppm(6),
        permeateFlow: [237, "mL/min"],
        drainFlow: [584, "mL/min"],
      },
      today: {
        permeateTds: ppm(6),
        tankAfterPressure: [18, "psi"],
        drawnVolume: [2, "L"],
        feedTds: ppm(184),
        tankFullPressure: [40, "psi"],
        feedTemperature: [12, "°C"],
      },
    },
    { "cause.complaint": "runsOut" },
  );

/** The meter slipped to another scale and nobody said so: it shows 1.41 times as much of every water. The unit is sound. */
export const everythingSaltier = (looks: object = {}): UnitFile =>
  place(
    "Sallow Lane kitchen",
    N1,
    {
      new: {
        feedTemperature: [16, "°C"],
        beforeFilterPressure: [4.4, "bar"],
        feedTds: ppm(240),
        permeateTds: ppm(9),
        permeateFlow: [456, "mL/min"],
        drainFlow: [1017, "mL/min"],
      },
      last: {
        feedTemperature: [13, "°C"],
        beforeFilterPressure: [4.35, "bar"],
        feedTds: ppm(246),
        permeateTds: ppm(10),
        permeateFlow: cup(0.5, 77),
        drainFlow: cup(1, 60),
      },
      today: {
        drainFlow: cup(1, 60),
        permeateTds: ppm(14),
        permeateFlow: cup(0.5, 75),
        deliveredTds: ppm(24),
        beforeFilterPressure: [4.4, "bar"],
        feedTemperature: [14, "°C"],
        feedTds: ppm(343),
      },
    },
    { "cause.complaint": "highSolids", ...looks },
  );

/** The softener before the unit is exhausted: hardness 210 mg/L where 10 is usual; no flow was taken. The unit is sound. */
export const hardAgain = (): UnitFile =>
  place(
    "Otter Bank school",
    N2,
    {
      new: {
        feedTemperature: [17, "°C"],
        beforeFilterPressure: [4.0, "bar"],
        feedTds: ppm(410),
        permeateTds: ppm(18),
        permeateFlow: [293, "mL/min"],
        drainFlow: [731, "mL/min"],
        hardness: [10, "mg/L"],
      },
      today: {
        hardness: [210, "mg/L"],
        permeateTds: ppm(18),
        beforeFilterPressure: [4.05, "bar"],
        chlorineAfter: nothingSeen(0.1),
        feedTds: ppm(398),
        feedTemperature: [16, "°C"],
      },
    },
    {},
    [...carbonAndElement, { role: "softener", fittedOn: "2025-02-03" }],
  );
