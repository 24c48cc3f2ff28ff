import type { UnitFile } from "@tapside/records";
import { cup, fileOf, N1, N2, N3, nothingSeen, ppm, visitOf } from "./build.ts";

const PSI = 6.894757293168361;
const new442 = (value: number) => ppm(value, "442", "meter442");

/** An ordinary annual visit to a school kitchen. Numbers: computed with an independent model, rounded as a technician reads. */
export function ordinaryVisit(scale: "442" | "NaCl" = "442"): UnitFile {
  const read = scale === "442" ? new442 : (value: number) => ppm(value, "NaCl", "meter442");
  return fileOf(
    "Sallow Lane primary school",
    N1,
    [
      { role: "sediment", fittedOn: "2025-11-20", intervalMonths: 12 },
      {
        role: "carbon",
        fittedOn: "2025-11-20",
        ratedLitres: 57_000,
        ratedChlorineMgPerL: 2,
        meterAtFittingM3: 100,
        intervalMonths: 18,
      },
      { role: "element", fittedOn: "2023-11-20", intervalMonths: 60 },
    ],
    [
      visitOf("new", "commissioning", "2023-11-20", {
        feedTemperature: [15, "°C"],
        beforeFilterPressure: [4.3, "bar"],
        feedTds: ppm(214),
        permeateTds: ppm(8),
        permeateFlow: [434, "mL/min"],
        drainFlow: [1006, "mL/min"],
      }),
      visitOf("lastYear", "annual", "2025-11-20", {
        feedTemperature: [12, "°C"],
        beforeFilterPressure: [4.2, "bar"],
        afterFilterPressure: [4.08, "bar"],
        feedTds: ppm(214),
        permeateTds: ppm(9),
        permeateFlow: [367, "mL/min"],
        drainFlow: [992, "mL/min"],
      }),
      visitOf(
        "today",
        "annual",
        "2026-11-25",
        {
          deliveredTds: read(22),
          tankFullPressure: [42, "psi"],
          waterMeter: [141, "m³"],
          feedTds: read(301),
          feedTemperature: [13, "°C"],
          chlorineBefore: [0.9, "mg/L"],
          chlorineAfter: nothingSeen(0.1),
          staticPressure: [65, "psi"],
          tankAfterPressure: [24, "psi"],
          beforeFilterPressure: [61, "psi"],
          afterFilterPressure: [51.6, "psi"],
          permeateFlow: cup(0.5, 94),
          drainFlow: cup(1, 65),
          permeateTds: read(15),
        },
        {
          asLeftTyped: {
            afterFilterPressure: [59.4, "psi"],
            permeateFlow: cup(0.5, 81),
            drainFlow: cup(1, 60),
            permeateTds: read(13),
            airCharge: [18, "psi"],
          },
        },
      ),
    ],
    [
      {
        id: "oven",
        name: "combi oven",
        type: "combiOven",
        minimumPressureKPaGauge: 20 * PSI,
        limits: [
          {
            id: "limit",
            appliance: "oven",
            quantity: "tds",
            high: 100,
            unit: "ppm",
            scale: "442",
            source: "label",
          },
        ],
      },
    ],
  );
}

/** A taste complaint: carbon long spent, element oxidised. */
export const tasteComplaint = (): UnitFile =>
  fileOf(
    "Dabchick Road youth kitchen",
    N2,
    [
      {
        role: "carbon",
        fittedOn: "2025-10-26",
        ratedLitres: 57_000,
        ratedChlorineMgPerL: 2,
        meterAtFittingM3: 200,
      },
      { role: "element", fittedOn: "2024-10-20" },
    ],
    [
      visitOf("new", "commissioning", "2024-10-20", {
        feedTemperature: [18, "°C"],
        beforeFilterPressure: [4.5, "bar"],
        feedTds: ppm(320),
        permeateTds: ppm(13),
        permeateFlow: [349, "mL/min"],
        drainFlow: [775, "mL/min"],
      }),
      visitOf("lastYear", "annual", "2025-10-26", {
        feedTemperature: [17, "°C"],
        beforeFilterPressure: [4.4, "bar"],
        feedTds: ppm(325),
        permeateTds: ppm(14),
        permeateFlow: [321, "mL/min"],
        drainFlow: [760, "mL/min"],
        chlorineAfter: nothingSeen(0.1),
      }),
      visitOf("today", "callOut", "2026-11-25", {
        chlorineBefore: [1.9, "mg/L"],
        chlorineAfter: [0.85, "mg/L"],
        waterMeter: [326, "m³"],
        feedTemperature: [20, "°C"],
        beforeFilterPressure: [4.4, "bar"],
        afterFilterPressure: [4.22, "bar"],
        feedTds: ppm(330),
        permeateTds: ppm(44),
        deliveredTds: ppm(61),
        permeateFlow: cup(0.5, 64),
        drainFlow: cup(1, 79),
      }),
    ],
  );

/** A drain heard all night: the check valve leaks back, the element is fine. */
export const drainAllNight = (): UnitFile =>
  fileOf(
    "Weir Street canteen",
    N3,
    [
      {
        role: "carbon",
        fittedOn: "2026-01-10",
        ratedLitres: 57_000,
        ratedChlorineMgPerL: 2,
        meterAtFittingM3: 10,
      },
      { role: "element", fittedOn: "2025-06-01" },
    ],
    [
      visitOf("new", "commissioning", "2025-06-01", {
        feedTemperature: [19, "°C"],
        beforeFilterPressure: [4.1, "bar"],
        feedTds: ppm(260),
        permeateTds: ppm(10),
        permeateFlow: [261, "mL/min"],
        drainFlow: [577, "mL/min"],
      }),
      visitOf("today", "callOut", "2026-11-25", {
        deliveredTds: ppm(28),
        permeateTds: ppm(13),
        feedTds: ppm(265),
        feedTemperature: [21, "°C"],
        beforeFilterPressure: [4.0, "bar"],
        afterFilterPressure: [3.89, "bar"],
        permeateFlow: cup(0.5, 118),
        drainFlow: cup(1, 106),
        chlorineAfter: nothingSeen(0.1),
        waterMeter: [62, "m³"],
        tankFullPressure: [37, "psi"],
        drainFlowFeedClosed: cup(0.5, 190),
      }),
    ],
  );
