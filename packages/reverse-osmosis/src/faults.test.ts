import { describe, expect, it } from "vitest";
import { type FaultId, faults } from "./faults.ts";
import { operatingPoint } from "./operating-point.ts";
import { simpleUnit } from "./simple-unit.ts";

const element = { areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65, polarisation: 1.1 };
const plain = simpleUnit(element, { ratedLPerH: 45, ratedKPa: 414 }, { volumeL: 53, airChargeKPaGauge: 50 });
const sound = {
  unit: { ...plain, cartridges: [{ id: "filters", dropKPa: 10, atLPerH: 80 }] },
  conditions: { feedPressureKPaGauge: 420, temperatureC: 15, feedMgPerL: 300, tankPressureKPaGauge: 0 },
};
const flows = (id?: FaultId, size = 0) => {
  const found = id ? faults[id].apply(sound, size) : sound;
  const point = operatingPoint(found.unit, found.conditions);
  if (point.kind !== "flowing") throw new Error(point.kind);
  return point;
};

describe("faults as changes of parameters (signs: trade knowledge, common practice)", () => {
  it.each(Object.keys(faults) as FaultId[])("%s has an answer at both ends of its range", (id) => {
    expect(flows(id, faults[id].low).recovery).toBeGreaterThan(0);
    expect(flows(id, faults[id].high).recovery).toBeLessThan(1);
  });
  it("a fouled element gives less at worse rejection; an oxidised one more at far worse", () => {
    expect(flows("fouledMembrane", 0.5).permeateLPerH).toBeLessThan(flows().permeateLPerH);
    expect(flows("fouledMembrane", 0.5).rejection).toBeLessThan(flows().rejection);
    expect(flows("oxidisedMembrane", 4).permeateLPerH).toBeGreaterThan(flows().permeateLPerH);
    expect(flows("oxidisedMembrane", 4).rejection).toBeLessThan(flows().rejection);
  });
});
