import { describe, expect, it } from "vitest";
import { simpleUnit } from "../simple-unit.ts";
import { elementsFlow } from "./elements-flow.ts";

const tank = { volumeL: 53, airChargeKPaGauge: 50 };
const element = { areaM2: 3, waterLPerM2HBar: 12, saltLPerM2H: 0.02, polarisation: 1 };
const unit = simpleUnit(element, { ratedLPerH: 40, ratedKPa: 414 }, tank);
const rough = { ...unit.elements[0]!, friction: { dropKPa: 5, atLPerH: 60 } };

describe("two elements in series", () => {
  it("where the first takes nearly all, the second still has a flow, a pressure and the rest of the salt", () => {
    const feedMgPerL = 500;
    const conditions = {
      feedPressureKPaGauge: 900,
      temperatureC: 40,
      feedMgPerL,
      tankPressureKPaGauge: 0,
    };
    const flows = elementsFlow({ ...unit, elements: [rough, rough], arrangement: "series" }, conditions, 20);
    for (let feedLPerH = 0.1; feedLPerH < 4; feedLPerH += 0.1) {
      const end = flows(feedLPerH, 900, 0);
      expect(end.concentrateKPa).toBeGreaterThan(0);
      expect(end.permeateLPerH).toBeCloseTo(feedLPerH, 9);
      expect(Math.abs(end.permeateSaltMgPerH / feedLPerH / feedMgPerL - 1)).toBeLessThan(1e-6);
    }
  });
});
