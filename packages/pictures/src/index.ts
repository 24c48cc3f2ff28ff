export { type BlendBarLimit, type BlendBarRequest, blendBar } from "./blend-bar.ts";
export { COLOURS, type Colours, contrast, type Theme, waterColour } from "./colours.ts";
export { type DayAtTankRequest, dayAtTank } from "./day-at-tank.ts";
export { escapeText } from "./escape-text.ts";
export { type FindingMarkRequest, findingMark } from "./finding-mark.ts";
export { type LifeStripPoint, type LifeStripRequest, lifeStrip } from "./life-strip.ts";
export { type BandPart, type LineOfWaterRequest, lineOfWater, type WaterBand } from "./line-of-water.ts";
export {
  type CurvePair,
  type CurvePoint,
  type NowAndChangedRequest,
  nowAndChanged,
} from "./now-and-changed.ts";
export { type DrawnNumeral, type NumeralRequest, numeral, numeralSvg } from "./numeral.ts";
export { type ReadingRailRequest, readingRail } from "./reading-rail.ts";
export { type SaturationCurveRequest, type SaturationPoint, saturationCurve } from "./saturation-curve.ts";
export { type TankDrawn, type TankPairRequest, tankPair } from "./tank-pair.ts";
export { type WaterHistoryRequest, waterHistory } from "./water-history.ts";
