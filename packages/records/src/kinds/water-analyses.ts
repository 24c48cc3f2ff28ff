/** One figure of a water analysis: a value or yearly mean, or a range, or both, in the unit as printed. */
export interface AnalysisLine {
  readonly name: string;
  readonly unit: string;
  readonly mean?: number;
  readonly low?: number;
  readonly high?: number;
}

/** A laboratory's analysis of a bottle, or a utility's yearly report, of a site's feed water. */
export interface WaterAnalysisEntry {
  readonly site: string;
  readonly origin: "laboratory" | "utility";
  readonly sampledOn?: string;
  readonly bottleCode?: string;
  readonly samplingPlace?: string;
  readonly lines?: readonly AnalysisLine[];
}
