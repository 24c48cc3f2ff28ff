import type { Element } from "../element.ts";
import { alongElement } from "./along-element.ts";
import { channelOf } from "./elements-flow.ts";

/** What one element was seen to do, permeate open or at a pressure already taken off. */
export interface SeenElement {
  readonly feedLPerH: number;
  readonly feedMgPerL: number;
  readonly driveKPa: number;
  readonly temperatureC: number;
  readonly permeateLPerH: number;
  readonly permeateMgPerL: number;
}

const step = 1e-6;
const farthest = Math.LN2;
const clamped = (change: number) => Math.min(farthest, Math.max(-farthest, change));

/**
 * The element with A and B such that the stepped model gives the flow and dissolved solids seen: Newton in ln A and ln B, no step
 * beyond a factor of two. Near osmotic equilibrium flow hardly answers to A alone, so both are moved together. Undefined where
 * no A and B are found.
 */
export function matchedElement(start: Element, seen: SeenElement): Element | undefined {
  /** Logarithms of seen over modelled: what is still wanting. */
  const wanting = (element: Element): readonly [number, number] => {
    const along = alongElement(channelOf(element, seen.temperatureC, 20));
    const end = along(seen.feedLPerH, seen.feedMgPerL, seen.driveKPa);
    const mgPerL = end.permeateSaltMgPerH / end.permeateLPerH;
    return [Math.log(seen.permeateLPerH / end.permeateLPerH), Math.log(seen.permeateMgPerL / mgPerL)];
  };
  let element = start;
  for (let n = 0; n < 100; n++) {
    const [water, salt] = wanting(element);
    if (!(Number.isFinite(water) && Number.isFinite(salt))) return undefined;
    if (Math.abs(water) < 1e-10 && Math.abs(salt) < 1e-10) return element;
    const { waterLPerM2HBar: a, saltLPerM2H: b } = element;
    const [waterByA, saltByA] = wanting({ ...element, waterLPerM2HBar: a * Math.exp(step) });
    const [waterByB, saltByB] = wanting({ ...element, saltLPerM2H: b * Math.exp(step) });
    const [aa, ab, ba, bb] = [water - waterByA, water - waterByB, salt - saltByA, salt - saltByB];
    const determinant = aa * bb - ab * ba;
    const moveA = (step * (water * bb - salt * ab)) / determinant;
    const moveB = (step * (salt * aa - water * ba)) / determinant;
    if (!(Number.isFinite(moveA) && Number.isFinite(moveB))) return undefined;
    element = {
      ...element,
      waterLPerM2HBar: a * Math.exp(clamped(moveA)),
      saltLPerM2H: b * Math.exp(clamped(moveB)),
    };
  }
  return undefined;
}
