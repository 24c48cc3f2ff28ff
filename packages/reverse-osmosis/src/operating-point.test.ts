import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readTable } from "./internal/read-table.test-helper.ts";
import { operatingPoint } from "./operating-point.ts";
import { simpleUnit } from "./simple-unit.ts";

// Independent integration with an adaptive stiff solver: reference/small-ro-unit/SOURCE.md (0.2 % flows, 0.5 % concentrations).
const rows = readTable(readFileSync("reference/small-ro-unit/operating_points.csv", "utf8"));

describe("operating point of a small unit", () => {
  it.each(rows)("agrees with the independent integration: $id", (row) => {
    const n = (name: string) => Number(row[name]);
    const unit = simpleUnit(
      {
        areaM2: n("area_m2"),
        waterLPerM2HBar: n("A_L_m2_h_bar"),
        saltLPerM2H: n("B_L_m2_h"),
        polarisation: n("beta"),
      },
      { ratedLPerH: n("restrictor_L_h"), ratedKPa: n("restrictor_rated_kPa") },
    );
    const point = operatingPoint(unit, {
      feedPressureKPaGauge: n("feed_pressure_kPa_gauge"),
      temperatureC: n("temperature_C"),
      feedMgPerL: n("feed_NaCl_mg_L"),
      tankPressureKPaGauge: n("tank_pressure_kPa_gauge"),
    });
    if (point.kind !== "flowing") throw new Error(point.kind);
    const off = (value: number, name: string) => Math.abs(value / n(name) - 1);
    expect(off(point.feedLPerH, "feed_L_h")).toBeLessThan(0.0002);
    expect(off(point.permeateLPerH, "permeate_L_h")).toBeLessThan(0.0002);
    expect(off(point.permeateMgPerL, "permeate_mg_L")).toBeLessThan(0.0005);
    expect(off(point.concentrateMgPerL, "concentrate_mg_L")).toBeLessThan(0.0005);
    expect(off(point.recovery, "recovery")).toBeLessThan(0.0002);
    expect(Math.abs(point.rejection * 100 - n("rejection_percent"))).toBeLessThan(0.005);
  });
});
