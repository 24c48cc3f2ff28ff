import { converted } from "@tapside/quantities";
import type { FieldValue } from "@tapside/records";
import { gaugeShowsKPa, metreShows, type Technician } from "./instruments.ts";
import type { Random } from "./random.ts";
import type { UnitTruth } from "./unit-truth.ts";
import type { PortTruth } from "./visit-truth.ts";

export interface Reader {
  readonly seed: string;
  readonly technician: Technician;
  readonly day: string;
  readonly random: Random;
  /** A borrowed meter shows the 442 scale, and nobody wrote it down. */
  readonly scaleWrong: boolean;
}

type Slots = Record<string, FieldValue>;
const CUP_L = { permeate: 0.5, drain: 1 } as const;

/** A reading to an instrument's step, as it is written down. */
const stepped = (value: number, step: number, decimals: number) => {
  const shown = (Math.round(value / step) * step).toFixed(decimals);
  return { raw: shown, value: Number(shown) };
};

function solids(reader: Reader, mgPerL: number, port: string, at: string): FieldValue {
  const { technician, seed, day, random } = reader;
  const shown = metreShows(technician, seed, day, mgPerL, random);
  const wrong = reader.scaleWrong && technician.scale === "NaCl" ? 1 / 0.7021 : 1;
  return {
    ...stepped(shown * wrong, 1, 0),
    unit: "ppm",
    scale: technician.scale,
    instrument: `demo:${technician.key}:meter`,
    port,
    at,
  };
}

function pressure(reader: Reader, kPa: number, port: string, at: string): FieldValue {
  const { technician, seed, random } = reader;
  const shown = gaugeShowsKPa(technician, seed, kPa, random);
  const bar = technician.gauge === "bar";
  return {
    ...(bar ? stepped(shown / 100, 0.05, 2) : stepped(converted(shown, "kPa", "psi"), 0.5, 1)),
    unit: technician.gauge,
    instrument: `demo:${technician.key}:gauge`,
    port,
    at,
  };
}

function timed(reader: Reader, lPerH: number, volumeL: number, port: string, at: string): FieldValue {
  const seconds =
    ((volumeL * (1 + 0.006 * reader.random.normal())) / lPerH) * 3600 + 0.3 * reader.random.normal();
  return { ...stepped(seconds, 1, 0), unit: "s", volumeL, port, at };
}

function chlorine(reader: Reader, mgPerL: number, port: string, at: string): FieldValue {
  const shown = Math.max(0, mgPerL * (1 + 0.07 * reader.random.normal()));
  if (shown < 0.05) return { raw: "0.1", value: 0.1, unit: "mg/L", notDetected: true, port, at };
  return { ...stepped(shown, 0.1, 1), unit: "mg/L", port, at };
}

const plain = (
  reader: Reader,
  value: number,
  step: number,
  decimals: number,
  unit: string,
  port: string,
) => ({
  ...stepped(value, step, decimals),
  unit,
  port,
  at: `${reader.day}T09:05:00Z`,
});

/** The readings of a whole visit as found, by slot. */
export function readAsFound(unit: UnitTruth, truth: PortTruth, meterM3: number, reader: Reader): Slots {
  const at = `${reader.day}T09:25:00Z`;
  const has = (port: string) => !unit.portsAbsent.includes(port);
  const { random } = reader;
  return {
    deliveredTds: solids(reader, truth.deliveredMgPerL, "delivered", at),
    ...(has("tank") && {
      tankFullPressure: pressure(reader, truth.tankFullKPa, "tank", at),
      drawnVolume: plain(reader, truth.drawnL, 0.1, 1, "L", "tank"),
      tankAfterPressure: pressure(reader, truth.tankAfterKPa, "tank", at),
    }),
    ...(has("meter") && { waterMeter: plain(reader, meterM3, 0.01, 2, "m³", "meter") }),
    feedTds: solids(reader, truth.feedMgPerL, "feed", at),
    feedTemperature: plain(reader, truth.temperatureC + 0.2 * random.normal(), 0.1, 1, "°C", "feed"),
    chlorineBefore: chlorine(reader, truth.chlorineBefore, "beforeFilter", at),
    chlorineAfter: chlorine(reader, truth.chlorineAfter, "afterFilter", at),
    beforeFilterPressure: pressure(reader, truth.beforeFilterKPa, "beforeFilter", at),
    ...readElement(unit, truth, reader, at),
  };
}

/** What is read again after work on filters or element. */
export const readAsLeft = (unit: UnitTruth, truth: PortTruth, reader: Reader): Slots => {
  const at = `${reader.day}T10:20:00Z`;
  return {
    beforeFilterPressure: pressure(reader, truth.beforeFilterKPa, "beforeFilter", at),
    feedTds: solids(reader, truth.feedMgPerL, "feed", at),
    feedTemperature: plain(reader, truth.temperatureC + 0.2 * reader.random.normal(), 0.1, 1, "°C", "feed"),
    ...readElement(unit, truth, reader, at),
  };
};

const readElement = (unit: UnitTruth, truth: PortTruth, reader: Reader, at: string): Slots => ({
  ...(!unit.portsAbsent.includes("afterFilter") && {
    afterFilterPressure: pressure(reader, truth.afterFilterKPa, "afterFilter", at),
  }),
  permeateFlow: timed(reader, truth.permeateLPerH, CUP_L.permeate, "permeateToWaste", at),
  drainFlow: timed(reader, truth.drainLPerH, CUP_L.drain, "drain", at),
  permeateTds: solids(reader, truth.permeateMgPerL, "permeateToWaste", at),
});
