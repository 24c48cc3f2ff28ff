import type { Unit } from "@tapside/reverse-osmosis";
import type { Complaint } from "./causes.ts";
import type { TestId } from "./test-catalogue.ts";

/** What the water and the feed usually are at this point: last readings, or the district's. */
export interface Usual {
  readonly staticPressureKPaGauge: number;
  readonly feedPressureKPaGauge: number;
  readonly temperatureC: number;
  readonly feedMgPerL: number;
  readonly chlorineMgPerL: number;
  readonly hardnessMgPerL: number;
}

/** Everything known before the first test: the unit as the record has it, its parts' ages, why we came. */
export interface Scene {
  /** Sound and clean, from the readings at commissioning or from the label. */
  readonly unit: Unit;
  readonly baseline: "commissioned" | "label";
  readonly usual: Usual;
  readonly softener: boolean;
  readonly remineraliser: boolean;
  readonly blendValve: boolean;
  readonly complaint?: Complaint;
  readonly elementYears?: number;
  /** Litres through the carbon over its capacity at this water's chlorine. */
  readonly carbonShare?: number;
  readonly filterMonths?: number;
  /** Tests that cannot be done here because the port is not there. */
  readonly impossible?: readonly TestId[];
}
