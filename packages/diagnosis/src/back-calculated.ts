import {
  deliveredLPerH,
  naclOsmoticPressureKPa,
  saltTemperatureFactor,
  storedLitres,
  temperatureForms,
  usableLitres,
} from "@tapside/reverse-osmosis";
import type { Expectation } from "./expectation.ts";
import type { SignId } from "./signs.ts";
import type { Values } from "./true-values.ts";

interface BackCalculated {
  readonly needs: readonly SignId[];
  /** About 0 for a sound unit, about 1 for a change one would notice. */
  readonly value: (read: Values, expected: Expectation) => number;
}

const ratio = (a: number, b: number, floor = 0.05): number => Math.log((a + floor) / (b + floor));
const logistic = (x: number): number => Math.asinh(x);

const areaOf = ({ scene }: Expectation) => scene.unit.elements.reduce((sum, one) => sum + one.areaM2, 0);

/** Water permeability over the record's, as a logarithm, from one pressure before the element. */
function water(read: Values, expected: Expectation, pressureKPa: number): number {
  const element = expected.scene.unit.elements[0];
  if (!element) return 0;
  const osmotic = naclOsmoticPressureKPa(1.15 * read.feedTds, read.temperature);
  const drive = Math.max(10, pressureKPa - osmotic);
  const flux = read.permeateFlow / areaOf(expected);
  const factor = temperatureForms[element.temperatureForm].factor(
    Math.min(45, Math.max(0, read.temperature)),
  );
  return ratio(flux / ((drive / 100) * factor), element.waterLPerM2HBar, 0.02) / 0.25;
}

/** Salt permeability over the record's, as a logarithm. */
function salt(read: Values, expected: Expectation, recovery: number): number {
  const element = expected.scene.unit.elements[0];
  if (!element) return 0;
  const share = Math.min(0.95, Math.max(0.01, recovery));
  const mean = read.feedTds * (-Math.log(1 - share) / share);
  const flux = read.permeateFlow / areaOf(expected);
  const behind = Math.max(0.02 * mean, element.polarisation * mean - read.permeateTds);
  const passing = (flux * read.permeateTds) / behind / saltTemperatureFactor(read.temperature);
  return ratio(passing, element.saltLPerM2H, 0.01) / 0.5;
}

const recoveryOf = (read: Values) => read.permeateFlow / Math.max(0.1, read.permeateFlow + read.drainFlow);

function filterDrop(read: Values, expected: Expectation): number {
  const flow = read.permeateFlow + read.drainFlow;
  const clean = expected.scene.unit.cartridges.reduce(
    (sum, one) => sum + one.dropKPa * (flow / one.atLPerH) ** 1.3,
    0,
  );
  return ratio(Math.max(0, read.beforeFilterPressure - read.afterFilterPressure), clean, 4);
}

/** Share of feed in the delivered water beyond what is set, from what the membrane makes. */
function feedInDelivered(read: Values, expected: Expectation): number {
  const { unit } = expected.scene;
  const filling = expected.sound.isolatedTds - (unit.addedMgPerL ?? 0);
  const rise = filling / Math.max(0.5, expected.sound.permeateTds);
  const set = unit.blendFraction ?? 0;
  const right = (1 - set) * rise * read.permeateTds + set * read.feedTds + (unit.addedMgPerL ?? 0);
  return logistic((read.deliveredTds - right) / (0.03 * read.feedTds + 1));
}

const tankLitres = ({ scene }: Expectation) => scene.unit.tanks.reduce((sum, one) => sum + one.volumeL, 0);

function chargeByBucket(read: Values, expected: Expectation): number {
  const { atmosphericKPa, tanks } = expected.scene.unit;
  const volume = Math.max(1, tankLitres(expected));
  const charge = ((read.tankFullPressure + atmosphericKPa) * read.gasL) / volume - atmosphericKPa;
  return (charge - (tanks[0]?.airChargeKPaGauge ?? 0)) / 25;
}

function drawOff(read: Values, expected: Expectation): number {
  const { atmosphericKPa, tanks } = expected.scene.unit;
  const [tank] = tanks;
  if (!tank) return 0;
  const swing = { fullKPaGauge: read.tankFullPressure, minimumKPaGauge: 35 };
  return ratio(read.drawOffL, usableLitres(tank, swing, atmosphericKPa), 0.5) / 0.3;
}

function gasShare(read: Values, expected: Expectation): number {
  const { atmosphericKPa, tanks } = expected.scene.unit;
  const [tank] = tanks;
  if (!tank) return 0;
  const gas = tank.volumeL - storedLitres(tank, read.tankFullPressure, atmosphericKPa);
  return ratio(read.gasL, gas, 0.5) / 0.3;
}

/**
 * What the readings mean for the parts: permeabilities, conductances, shares, ratios to what the record expects. Each is about 0
 * for a sound unit whatever the pressure, temperature and water of the day.
 * Formula: those of the forward model turned round, in closed form
 * Source: as the functions of the unit's physics that they call.
 */
export const BACK_CALCULATED: readonly BackCalculated[] = [
  {
    needs: ["permeateFlow", "afterFilterPressure", "temperature", "feedTds"],
    value: (r, e) =>
      water(r, e, r.afterFilterPressure + e.sound.elementPressure - e.sound.afterFilterPressure),
  },
  {
    needs: ["permeateFlow", "beforeFilterPressure", "temperature", "feedTds"],
    value: (r, e) =>
      water(r, e, r.beforeFilterPressure + e.sound.elementPressure - e.sound.beforeFilterPressure),
  },
  {
    needs: ["permeateFlow", "elementPressure", "temperature", "feedTds"],
    value: (r, e) => water(r, e, r.elementPressure),
  },
  {
    needs: ["permeateFlow", "permeateTds", "feedTds", "temperature", "drainFlow"],
    value: (r, e) => salt(r, e, recoveryOf(r)),
  },
  {
    needs: ["permeateFlow", "permeateTds", "feedTds", "temperature"],
    value: (r, e) => salt(r, e, e.sound.permeateFlow / (e.sound.permeateFlow + e.sound.drainFlow)),
  },
  {
    needs: ["permeateTds", "feedTds"],
    value: (r, e) => ratio(r.permeateTds / r.feedTds, e.sound.permeateTds / e.sound.feedTds, 0.003) / 0.4,
  },
  {
    needs: ["drainFlow", "afterFilterPressure"],
    value: (r, e) => conductance(r.drainFlow, r.afterFilterPressure, e) / 0.3,
  },
  {
    needs: ["drainFlow", "beforeFilterPressure"],
    value: (r, e) => conductance(r.drainFlow, r.beforeFilterPressure, e) / 0.3,
  },
  {
    needs: ["permeateFlow", "drainFlow"],
    value: (r, e) =>
      (ratio(r.permeateFlow, r.drainFlow, 0.3) - ratio(e.sound.permeateFlow, e.sound.drainFlow, 0.3)) / 0.4,
  },
  { needs: ["beforeFilterPressure", "afterFilterPressure", "permeateFlow", "drainFlow"], value: filterDrop },
  {
    needs: ["beforeFilterPressure", "afterFilterPressure"],
    value: (r) => ratio(r.afterFilterPressure, r.beforeFilterPressure, 2) / 0.15,
  },
  {
    needs: ["beforeFilterPressure", "staticPressure"],
    value: (r) => ratio(r.beforeFilterPressure, r.staticPressure, 2) / 0.1,
  },
  {
    needs: ["tankFullPressure", "staticPressure"],
    value: (r, e) =>
      (r.tankFullPressure / Math.max(20, r.staticPressure) -
        e.sound.tankFullPressure / e.sound.staticPressure) /
      0.08,
  },
  { needs: ["gasL", "tankFullPressure"], value: chargeByBucket },
  { needs: ["gasL", "tankFullPressure"], value: gasShare },
  { needs: ["drawOffL", "tankFullPressure"], value: drawOff },
  {
    needs: ["airCharge"],
    value: (r, e) => (r.airCharge - (e.scene.unit.tanks[0]?.airChargeKPaGauge ?? 0)) / 25,
  },
  {
    needs: ["outletFlow", "tankFullPressure"],
    value: (r, e) =>
      ratio(r.outletFlow, deliveredLPerH(e.scene.unit, Math.max(1, r.tankFullPressure), 15), 1) / 0.4,
  },
  { needs: ["deliveredTds", "permeateTds", "feedTds"], value: feedInDelivered },
  {
    needs: ["firstDrawTds", "deliveredTds"],
    value: (r) => ratio(r.firstDrawTds, 1.4 * r.deliveredTds, 0.5) / 0.4,
  },
  {
    needs: ["firstDrawTds", "permeateTds"],
    value: (r, e) =>
      (ratio(r.firstDrawTds, r.permeateTds, 0.5) - ratio(e.sound.firstDrawTds, e.sound.permeateTds, 0.5)) /
      0.4,
  },
  {
    needs: ["firstDrawTds", "flushedTds"],
    value: (r) => ratio(r.firstDrawTds, 1.4 * r.flushedTds, 0.5) / 0.4,
  },
  {
    needs: ["isolatedTds", "deliveredTds", "feedTds"],
    value: (r, e) =>
      logistic(
        ((r.deliveredTds - r.isolatedTds) / r.feedTds -
          (e.sound.deliveredTds - e.sound.isolatedTds) / e.sound.feedTds) /
          0.03,
      ),
  },
  {
    needs: ["chlorineAfter", "chlorineBefore"],
    value: (r) => ratio(r.chlorineAfter, r.chlorineBefore, 0.03) + 2.5,
  },
  {
    needs: ["drainLineOffFlow", "drainFlow"],
    value: (r) => ratio(r.drainLineOffFlow, r.drainFlow, 0.2) / 0.3,
  },
  {
    needs: ["drainTankFullFlow", "drainFeedClosedFlow"],
    value: (r) => logistic((r.drainTankFullFlow - r.drainFeedClosedFlow) / 0.5),
  },
  {
    needs: ["drainTankFullFlow", "drainFlow"],
    value: (r) => ratio(r.drainTankFullFlow, r.drainFlow, 0.3) / 0.5,
  },
  {
    needs: ["throttledTds", "permeateTds"],
    value: (r, e) =>
      (ratio(r.throttledTds, r.permeateTds, 0.3) - ratio(e.sound.throttledTds, e.sound.permeateTds, 0.3)) /
      0.15,
  },
  {
    needs: ["throttledFlow", "permeateFlow"],
    value: (r, e) =>
      (ratio(r.throttledFlow, r.permeateFlow) - ratio(e.sound.throttledFlow, e.sound.permeateFlow)) / 0.1,
  },
  {
    needs: ["feedTds", "tdsStandard"],
    value: (r, e) => ratio(r.feedTds / Math.max(0.1, r.tdsStandard), e.sound.feedTds, 1) / 0.2,
  },
  {
    needs: ["dailyLitres", "permeateFlow"],
    value: (r) => ratio(r.dailyLitres, 12 * r.permeateFlow, 5) / 0.5,
  },
  {
    needs: ["staticPressure", "gaugeCheck"],
    value: (r, e) => ratio(r.staticPressure / Math.max(0.1, r.gaugeCheck), e.sound.staticPressure, 5) / 0.2,
  },
  {
    needs: ["beforeFilterPressure", "gaugeCheck"],
    value: (r, e) =>
      ratio(r.beforeFilterPressure / Math.max(0.1, r.gaugeCheck), e.sound.beforeFilterPressure, 5) / 0.2,
  },
  {
    needs: ["elementPressure", "afterFilterPressure"],
    value: (r, e) =>
      (r.elementPressure - r.afterFilterPressure - e.sound.elementPressure + e.sound.afterFilterPressure) /
      40,
  },
];

function conductance(drain: number, pressureKPa: number, { sound }: Expectation): number {
  const shown = drain / Math.sqrt(Math.max(5, pressureKPa));
  return ratio(shown, sound.drainFlow / Math.sqrt(sound.beforeFilterPressure), 0.01);
}
