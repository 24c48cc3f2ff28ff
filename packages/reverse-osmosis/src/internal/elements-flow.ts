import type { Element } from "../element.ts";
import { saltTemperatureFactor } from "../salt-temperature-factor.ts";
import { temperatureForms } from "../temperature-correction.ts";
import type { Conditions, Unit } from "../unit.ts";
import { type AlongElement, alongElement, type Channel } from "./along-element.ts";

export interface ElementsEnd {
  readonly permeateLPerH: number;
  readonly permeateSaltMgPerH: number;
  readonly concentrateKPa: number;
}

export function channelOf(element: Element, temperatureC: number, segments: number): Channel {
  const water = element.waterLPerM2HBar * temperatureForms[element.temperatureForm].factor(temperatureC);
  return {
    waterLPerHKPa: (water * element.areaM2) / 100,
    saltLPerH: element.saltLPerM2H * saltTemperatureFactor(temperatureC) * element.areaM2,
    polarisation: element.polarisation,
    kelvinRatio: (temperatureC + 273.15) / 298.15,
    segments,
  };
}

const frictionKPa = (element: Element, feedLPerH: number) =>
  element.friction ? element.friction.dropKPa * (feedLPerH / element.friction.atLPerH) ** 1.5 : 0;

interface Stream {
  readonly feedLPerH: number;
  readonly saltMgPerH: number;
  readonly pressureKPa: number;
}

function oneElement(element: Element, along: AlongElement, stream: Stream, backKPa: number) {
  const { feedLPerH, saltMgPerH, pressureKPa } = stream;
  const drop = Math.min(frictionKPa(element, feedLPerH), pressureKPa);
  const feedMgPerL = saltMgPerH / feedLPerH;
  const driveKPa = pressureKPa - backKPa;
  const wanted = driveKPa > 0 ? ((element.leakLPerHBar ?? 0) * driveKPa) / 100 : 0;
  const leak = Math.min(wanted, 0.5 * feedLPerH);
  const end = along(feedLPerH - leak, feedMgPerL, Math.max(driveKPa, 0), drop);
  const water = end.permeateLPerH + leak;
  const salt = end.permeateSaltMgPerH + leak * feedMgPerL;
  return {
    water,
    salt,
    // Not feed less permeate: where nearly all passes, that difference rounds to nothing and the next element would divide by it.
    rest: {
      feedLPerH: end.concentrateLPerH,
      saltMgPerH: end.concentrateSaltMgPerH,
      pressureKPa: pressureKPa - drop,
    },
  };
}

/** All elements together as a function of feed flow and pressure; constants at temperature are worked out once. */
export function elementsFlow(unit: Unit, conditions: Conditions, segments: number) {
  const { elements } = unit;
  const channels = elements.map((element) => channelOf(element, conditions.temperatureC, segments));
  const along = channels.map(alongElement);
  const series = (feedLPerH: number, pressureKPa: number, backKPa: number): ElementsEnd => {
    let stream: Stream = { feedLPerH, saltMgPerH: feedLPerH * conditions.feedMgPerL, pressureKPa };
    let water = 0;
    let salt = 0;
    for (let i = 0; i < elements.length; i++) {
      const end = oneElement(elements[i]!, along[i]!, stream, backKPa);
      water += end.water;
      salt += end.salt;
      stream = end.rest;
    }
    return { permeateLPerH: water, permeateSaltMgPerH: salt, concentrateKPa: stream.pressureKPa };
  };
  const parallel = (feedLPerH: number, pressureKPa: number, backKPa: number): ElementsEnd => {
    const share = feedLPerH / elements.length;
    let water = 0;
    let salt = 0;
    let least = pressureKPa;
    for (let i = 0; i < elements.length; i++) {
      const stream = { feedLPerH: share, saltMgPerH: share * conditions.feedMgPerL, pressureKPa };
      const end = oneElement(elements[i]!, along[i]!, stream, backKPa);
      water += end.water;
      salt += end.salt;
      least = Math.min(least, end.rest.pressureKPa);
    }
    return { permeateLPerH: water, permeateSaltMgPerH: salt, concentrateKPa: least };
  };
  const ceilingLPerH = (pressureKPa: number, backKPa: number) => {
    let sum = 0;
    for (let i = 0; i < elements.length; i++)
      sum +=
        (channels[i]!.waterLPerHKPa + (elements[i]!.leakLPerHBar ?? 0) / 100) *
        Math.max(0, pressureKPa - backKPa);
    return sum;
  };
  return Object.assign(unit.arrangement === "parallel" ? parallel : series, { ceilingLPerH });
}
