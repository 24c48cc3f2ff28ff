import type { Situation } from "@tapside/reverse-osmosis";
import type { Scene } from "./scene.ts";

/** The truth of a unit and its water: the situation of the forward model, and what belongs to the readings. */
export interface Hidden {
  /** `conditions.feedPressureKPaGauge` is the flowing pressure before the filters. */
  readonly situation: Situation;
  readonly staticPressureKPaGauge: number;
  readonly chlorineMgPerL: number;
  /** Share of the chlorine that passes the carbon. */
  readonly carbonPass: number;
  /** At the inlet of the unit, after the softener. */
  readonly hardnessMgPerL: number;
  /** What the meter shows over what is there. */
  readonly tdsGain: number;
  readonly gaugeGain: number;
  /** First draw after standing over the water behind it. */
  readonly firstDrawFactor: number;
  /** Blend that was set on purpose, within `unit.blendFraction`. */
  readonly setBlend: number;
  /** Wanted a day. */
  readonly dailyLitres: number;
  readonly tankValveShut: boolean;
  readonly lineKinked: boolean;
  readonly diaphragmRuptured: boolean;
  readonly meterScaleWrong: boolean;
  readonly scaleSeen: boolean;
  readonly foulingSeen: boolean;
  readonly brineSealBad: boolean;
  readonly oRingBad: boolean;
}

/** The unit of a scene as it should be: what a sound unit hides. */
export function soundHidden(scene: Scene): Hidden {
  const { usual, unit } = scene;
  return {
    situation: {
      unit,
      conditions: {
        feedPressureKPaGauge: usual.feedPressureKPaGauge,
        temperatureC: usual.temperatureC,
        feedMgPerL: usual.feedMgPerL,
        tankPressureKPaGauge: 0,
      },
    },
    staticPressureKPaGauge: usual.staticPressureKPaGauge,
    chlorineMgPerL: usual.chlorineMgPerL,
    carbonPass: 0.02,
    hardnessMgPerL: usual.hardnessMgPerL,
    tdsGain: 1,
    gaugeGain: 1,
    firstDrawFactor: 1.4,
    setBlend: unit.blendFraction ?? 0,
    dailyLitres: 100,
    tankValveShut: false,
    lineKinked: false,
    diaphragmRuptured: false,
    meterScaleWrong: false,
    scaleSeen: false,
    foulingSeen: false,
    brineSealBad: false,
    oRingBad: false,
  };
}
