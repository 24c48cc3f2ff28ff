import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { filling } from "./filling.ts";
import { readTable } from "./internal/read-table.test-helper.ts";
import { simpleUnit } from "./simple-unit.ts";

// Independent integration: reference/small-ro-unit/SOURCE.md (0.2 % volumes and times, 0.5 % concentrations).
const rows = readTable(readFileSync("reference/small-ro-unit/fillings.csv", "utf8"));

describe("filling of a pressurised tank", () => {
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
      { volumeL: n("tank_L"), airChargeKPaGauge: n("air_charge_kPa_gauge") },
    );
    const conditions = {
      feedPressureKPaGauge: n("feed_pressure_kPa_gauge"),
      temperatureC: n("temperature_C"),
      feedMgPerL: n("feed_NaCl_mg_L"),
    };
    const filled = filling({ ...unit, shutOff: { ratio: n("shutoff_ratio") } }, conditions);
    if (filled.kind !== "known") throw new Error(filled.kind);
    const off = (value: number, name: string) => Math.abs(value / n(name) - 1);
    expect(off(filled.value.hours, "fill_time_h")).toBeLessThan(0.0005);
    expect(off(filled.value.storedL, "stored_L")).toBeLessThan(0.0001);
    expect(off(filled.value.meanMgPerL, "mean_permeate_mg_L")).toBeLessThan(0.001);
    expect(off(filled.value.drainL, "drain_L")).toBeLessThan(0.0005);
    expect(off(filled.value.efficiency, "efficiency")).toBeLessThan(0.0005);
    expect(off(filled.value.recoveryAtStart, "recovery_at_start")).toBeLessThan(0.0002);
    expect(off(filled.value.shutOffKPaGauge, "shutoff_kPa_gauge")).toBeLessThan(0.0001);
  });
});
