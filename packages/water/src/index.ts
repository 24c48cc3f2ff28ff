export {
  CONSTITUENTS,
  type ConservedWater,
  type ConstituentId,
  type IonsMgPerL,
  MOLAR_MASS,
  type WaterAnalysis,
} from "./analysis.ts";
export {
  type AnalysisQuality,
  analysisQuality,
  chargeImbalancePercent,
  type UnitSuspicion,
} from "./analysis-quality.ts";
export { type ApplianceMake, publishedNeeds } from "./appliance-needs.ts";
export { type BehindBlend, blendForAll } from "./blend-for-all.ts";
export {
  type BlendAnswer,
  type BlendOptions,
  type BlendPair,
  blendedStream,
  blendRange,
  type LimitOnBlend,
  type Stream,
  sureBlendRange,
} from "./blend-range.ts";
export { type BoiledDown, type Boiling, boilDown } from "./boil.ts";
export { linearFactor, naturalWaterFactor20, naturalWaterFactor25 } from "./compensation.ts";
export {
  type CompletionOptions,
  centralWater,
  completeWater,
  type FieldReadings,
  LABORATORY_UNCERTAINTY,
  READING_UNCERTAINTY,
} from "./complete.ts";
export { conductivity, conductivityAt25, limitingConductivity } from "./conductivity.ts";
export { type EquilibriumId, logK } from "./constants.ts";
export {
  aggressiveIndex,
  approximateCo2,
  concentrateConcentration,
  langelierIndex,
  larsonSkoldIndex,
  puckoriusIndex,
  puckoriusPh,
  ryznarIndex,
} from "./corrosion-indices.ts";
export { CUSTOMARY_INDICES, type CustomaryIndexId, customaryIndices } from "./customary-indices.ts";
export { type DebyeHuckel, debyeHuckel } from "./debye-huckel.ts";
export { AIR_CO2_ATM, type Degassed, degas } from "./degas.ts";
export {
  convertHardness,
  HARDNESS_UNIT_MG_PER_L_CACO3,
  type HardnessUnit,
  hardnessFromIons,
} from "./hardness.ts";
export { heatClosed } from "./heat.ts";
export { createIndexMeter, type IndexMeter } from "./index-meter.ts";
export { normalFrom, seededUniform } from "./internal/seeded.ts";
export {
  type LangelierInput,
  type LangelierVariant,
  larsonBuswellC400,
  simplifiedSaturationPh,
} from "./langelier.ts";
export { middleWater } from "./middle-water.ts";
export { blend, type MixPart, mix } from "./mix.ts";
export { mostTellingReadings, type TellingReading } from "./most-telling.ts";
export { type PrecipitationPotential, precipitationPotential } from "./precipitation.ts";
export { type PriorComponent, priorFromWaters, type RealWater, realWaterPrior, realWaters } from "./prior.ts";
export {
  COFFEE_LIMITS,
  type SteelGrade,
  steelChlorideLimit,
} from "./published-limits.ts";
export { type Remineralised, remineralise } from "./remineralise.ts";
export {
  plainLine,
  type RefusedReportRow,
  type ReportInTable,
  type ReportTable,
  reportsOfTable,
} from "./report-table.ts";
export { type ReportedId, reportedAmount, reportedId } from "./reported-amount.ts";
export {
  type ReportedWater,
  type ReportLine,
  type ReportQuality,
  type ReportSuspicion,
  readingsOfReport,
  readReport,
  reportQuality,
} from "./reported-water.ts";
export { calciteSaturationAt } from "./saturation-at.ts";
export {
  INDEX_MODEL_SPREAD,
  type ScaleBandPoint,
  type ScalePoint,
  scaleBand,
  scaleCurve,
} from "./scale-curve.ts";
export { type SilicaForm, silicaSolubility } from "./silica-solubility.ts";
export { speciate, speciateConserved } from "./speciate.ts";
export { type Rejections, type SplitStreams, splitStream } from "./split.ts";
export { type HistoryPoint, type HistoryStep, stepsInHistory } from "./steps-in-history.ts";
export {
  type Dosed,
  type LimitAnswer,
  type PropertyId,
  suits,
  type WaterLimit,
} from "./suits.ts";
export { convertTdsScale, ec25FromTds, type ScaleReading, type TdsScale, tdsOnScale } from "./tds-scale.ts";
export type { SaturationIndices, SpeciesId, Water } from "./water.ts";
