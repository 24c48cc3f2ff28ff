import type { WaterJudged } from "@tapside/assessment";

/** A scale curve's point as its three readings. */
export type WaterBandPoint = WaterJudged["band"][number];

/** What is said about a water, on screen and on paper alike. */
export interface WaterWords {
  readonly title: string;
  readonly measured: string;
  readonly completed: string;
  readonly scales: string;
  readonly dissolves: string;
  readonly curve: string;
  readonly modelSpread: string;
  readonly guidance: string;
  /** Over what delivered water is to the appliances. */
  readonly suits: string;
  readonly unknown: string;
  /** Name of a constituent or reading. */
  name(id: string): string;
  unit(id: string): string;
  /** "61" or "12–40": two figures, no more than the interval backs. */
  range(low: number, middle: number, high: number, measured: boolean): string;
  /** "Scales lightly at 100 °C: 60–85 mg per litre heated." */
  heated(point: WaterBandPoint): string;
  mostTelling(reading: string): string;
  /** Name of an index asked for by name, with its variant. */
  index(id: string): string;
  readonly history: string;
  readonly stepRule: string;
  /** A conductivity with its unit, two figures. */
  conductivity(ec25UsPerCm: number): string;
  /** What the picture of the history shows: "At 5 visits. Step up on 3 Mar 2026: 410 to 690 µS/cm." */
  historyTold(
    visits: number,
    steps: readonly { readonly day: string; readonly before: number; readonly after: number }[],
  ): string;
  /** "Chloride up to 25 mg/L (oven; label)". */
  limit(limit: {
    readonly property: string;
    readonly low?: number;
    readonly high?: number;
    readonly unit: string;
    readonly source: string;
    readonly appliance?: string;
  }): string;
  answer(answer: "within" | "outside" | "too-close-to-say" | "cannot-tell"): string;
  suspicion(id: string): string;
  verdict(verdict: "agrees" | "doubtful" | "cannot-tell"): string;
}
