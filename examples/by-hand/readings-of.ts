import { converted } from "@tapside/quantities";
import type { FieldValue } from "@tapside/records";
import { operatingPoint, simpleUnit } from "@tapside/reverse-osmosis";
import type { DemoUnit, DemoVisit } from "../district.ts";
import { elementOf, PLATES, TEST } from "../generator/plates.ts";

const CUP_L = { permeate: 0.5, drain: 1 } as const;

/** What a technician reads at this visit: the model's numbers, rounded as instruments show them. */
export function readingsOf(unit: DemoUnit, visit: DemoVisit): Readonly<Record<string, FieldValue>> {
  const element = elementOf(unit.plate);
  const plate = PLATES[unit.plate];
  const after = visit.feedPressurePsi - visit.filterDropPsi;
  const point = operatingPoint(
    simpleUnit(
      {
        ...element,
        waterLPerM2HBar: element.waterLPerM2HBar * visit.water,
        saltLPerM2H: element.saltLPerM2H * visit.salt,
      },
      { ratedLPerH: plate.rejectLPerH, ratedKPa: TEST.pressureKPaGauge },
    ),
    {
      feedPressureKPaGauge: converted(after, "psi", "kPa"),
      temperatureC: visit.temperatureC,
      feedMgPerL: visit.feedPpm,
      tankPressureKPaGauge: 0,
    },
  );
  if (point.kind !== "flowing") throw new Error(`nothing flows at ${unit.site}`);
  const at = `${visit.day}T09:30:00Z`;
  const solids = (value: number, port: string) => ({
    raw: value.toFixed(0),
    value: Math.round(value),
    unit: "ppm",
    scale: "NaCl",
    instrument: "demo:meter",
    port,
    at,
  });
  const gauge = (value: number, port: string) => ({
    raw: value.toFixed(1),
    value: Number(value.toFixed(1)),
    unit: "psi",
    instrument: "demo:gauge",
    port,
    at,
  });
  const cup = (lPerH: number, volumeL: number, port: string) => {
    const seconds = Math.round((volumeL / lPerH) * 3600);
    return { raw: String(seconds), value: seconds, unit: "s", volumeL, port, at };
  };
  const has = (port: string) => !unit.portsAbsent?.includes(port);
  const full = Math.round(0.64 * after);
  const chlorine = visit.chlorineAfter;
  return {
    "reading:asFound:feedTds": solids(visit.feedPpm, "feed"),
    "reading:asFound:feedTemperature": {
      raw: String(visit.temperatureC),
      value: visit.temperatureC,
      unit: "°C",
      port: "feed",
      at,
    },
    "reading:asFound:chlorineBefore": { raw: "0.9", value: 0.9, unit: "mg/L", port: "beforeFilter", at },
    "reading:asFound:chlorineAfter": {
      raw: String(chlorine ?? 0.1),
      value: chlorine ?? 0.1,
      unit: "mg/L",
      port: "afterFilter",
      at,
      ...(chlorine === undefined && { notDetected: true }),
    },
    "reading:asFound:permeateTds": solids(point.permeateMgPerL, "permeateToWaste"),
    "reading:asFound:deliveredTds": solids(point.permeateMgPerL * (visit.delivered ?? 1.6), "delivered"),
    "reading:asFound:permeateFlow": cup(point.permeateLPerH, CUP_L.permeate, "permeateToWaste"),
    "reading:asFound:drainFlow": cup(point.concentrateLPerH, CUP_L.drain, "drain"),
    ...(has("beforeFilter") && {
      "reading:asFound:beforeFilterPressure": gauge(visit.feedPressurePsi, "beforeFilter"),
    }),
    ...(has("afterFilter") && { "reading:asFound:afterFilterPressure": gauge(after, "afterFilter") }),
    ...(has("tank") && { "reading:asFound:tankFullPressure": gauge(full, "tank") }),
    ...(has("tank") &&
      visit.airPsi !== undefined && { "reading:asFound:airCharge": gauge(visit.airPsi, "tank") }),
    ...(has("meter") &&
      visit.meterM3 !== undefined && {
        "reading:asFound:waterMeter": {
          raw: String(visit.meterM3),
          value: visit.meterM3,
          unit: "m³",
          port: "meter",
          at,
        },
      }),
  };
}
