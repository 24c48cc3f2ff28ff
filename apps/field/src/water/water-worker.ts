import { CURVE_C, judgeWater, type WaterJudged, waterSamples } from "@tapside/assessment";
import type { FieldReadings, WaterAnalysis } from "@tapside/water";

/** What the page asks of the worker, and what comes back. */
export interface WaterAsked {
  readonly key: string;
  readonly readings: FieldReadings;
}
export interface WaterTold {
  readonly key: string;
  readonly judged?: WaterJudged;
  readonly samples: readonly WaterAnalysis[];
}

const SAMPLES = 120;

/** Completes a water away from the screen, so that it never stops following the finger. */
self.addEventListener("message", ({ data }: MessageEvent<WaterAsked>) => {
  const samples = waterSamples(data.readings, SAMPLES);
  const told: WaterTold =
    samples.kind === "known"
      ? { key: data.key, judged: judgeWater(data.readings, samples.value, CURVE_C), samples: samples.value }
      : { key: data.key, samples: [] };
  self.postMessage(told);
});
