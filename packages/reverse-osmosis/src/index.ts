export { atmosphericPressureKPa } from "./atmospheric-pressure.ts";
export { type BucketTest, bucketTest, type TankFound } from "./bucket-test.ts";
export { type CapillaryFlow, capillaryFlow } from "./capillary-flow.ts";
export { type Cartridge, cartridgeDropKPa } from "./cartridge-drop.ts";
export { concentrationFactor } from "./concentration-factor.ts";
export { dissolvedOxygenMgPerL } from "./dissolved-oxygen.ts";
export type { Element } from "./element.ts";
export { elementFromNameplate, type Nameplate } from "./element-from-nameplate.ts";
export {
  type ExpectedPort,
  expectedReadings,
  type Interval,
  type Scatter,
  type Today,
  usualScatter,
} from "./expected-readings.ts";
export { type Filling, type FillingOptions, filling } from "./filling.ts";
export { type FitReadings, fitUnit, type UnitFit } from "./fit-unit.ts";
export { hazenWilliamsHeadM } from "./hazen-williams.ts";
export { logMeanFactor } from "./log-mean-factor.ts";
export { naclActivityCoefficient } from "./nacl-activity-coefficient.ts";
export { naclMolality } from "./nacl-molality.ts";
export { naclOsmoticCoefficient } from "./nacl-osmotic-coefficient.ts";
export { naclOsmoticPressureKPa } from "./nacl-osmotic-pressure.ts";
export { nameplateReadings } from "./nameplate-readings.ts";
export {
  type FlowingPoint,
  type IdlePoint,
  type OperatingOptions,
  type OperatingPoint,
  operatingPoint,
} from "./operating-point.ts";
export { orificeFlowLPerH } from "./orifice-flow.ts";
export { type Restrictor, restrictorLPerH } from "./restrictor.ts";
export { saltTemperatureFactor } from "./salt-temperature-factor.ts";
export { shutOffIsClosed, shutOffPressureKPaGauge, usualShutOffRatio } from "./shut-off.ts";
export { simpleUnit } from "./simple-unit.ts";
export { type Standardised, type StandardReadings, standardise } from "./standardise.ts";
export {
  bestAirChargeKPaGauge,
  storedLitres,
  type Tank,
  tankPressureKPaGauge,
  usableLitres,
} from "./tank.ts";
export {
  defaultTemperatureForm,
  isTemperatureFormId,
  type TemperatureForm,
  type TemperatureFormId,
  temperatureCorrection,
  temperatureForms,
} from "./temperature-correction.ts";
export { type Tube, type TubeDrop, tubeDrop } from "./tube-drop.ts";
export type { Booster, Conditions, Unit } from "./unit.ts";
export { waterDensityKgPerM3 } from "./water-density.ts";
export { waterViscosityMPaS } from "./water-viscosity.ts";
