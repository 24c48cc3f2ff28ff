export { atmosphericPressureKPa } from "./atmospheric-pressure.ts";
export { boosterByTwoPoints } from "./booster-by-two-points.ts";
export { boosterRiseKPa } from "./booster-rise.ts";
export { type BucketTest, bucketTest, type TankFound } from "./bucket-test.ts";
export { type CapillaryFlow, capillaryFlow } from "./capillary-flow.ts";
export { carbonicPk1, freeCarbonDioxideMgPerL } from "./carbonic-acid.ts";
export { type Cartridge, cartridgeDropKPa } from "./cartridge-drop.ts";
export { concentrationFactor } from "./concentration-factor.ts";
export { type ConstantFill, constantFillHours } from "./constant-fill.ts";
export { deliveredLPerH } from "./delivered-flow.ts";
export { dissolvedOxygenMgPerL } from "./dissolved-oxygen.ts";
export { drawdownShare } from "./drawdown.ts";
export { efficiency } from "./efficiency.ts";
export type { Element } from "./element.ts";
export { elementFromNameplate, type Nameplate } from "./element-from-nameplate.ts";
export { type ElementPlace, elementProfile } from "./element-profile.ts";
export {
  type ExpectedPort,
  expectedReadings,
  type Interval,
  type Scatter,
  type Today,
  usualScatter,
} from "./expected-readings.ts";
export { type FaultId, faults } from "./faults.ts";
export { type Filling, type FillingOptions, filling } from "./filling.ts";
export { type FillingSays, fillingSays } from "./filling-says.ts";
export { type FirstDraw, type FirstDrawQuestion, firstDraw, type Waste } from "./first-draw.ts";
export { type FitReadings, fitUnit, type UnitFit } from "./fit-unit.ts";
export { type FullTank, fullTank } from "./full-tank.ts";
export { hazenWilliamsHeadM } from "./hazen-williams.ts";
export { type IonOptions, type IonPlace, type IonsAlong, ionsAlongElement } from "./ions-along-element.ts";
export {
  LINE_RANGES,
  LINES,
  type Line,
  type LinesFound,
  lineAsFound,
  lineLossKPa,
  linesAsFound,
  USUAL_BORE_MM,
} from "./lines-as-found.ts";
export { logMeanFactor } from "./log-mean-factor.ts";
export { naclActivityCoefficient } from "./nacl-activity-coefficient.ts";
export { naclMolality } from "./nacl-molality.ts";
export { naclOsmoticCoefficient } from "./nacl-osmotic-coefficient.ts";
export { naclOsmoticPressureKPa } from "./nacl-osmotic-pressure.ts";
export { nameplateReadings } from "./nameplate-readings.ts";
export { type Drive, netDrivingPressure } from "./net-driving-pressure.ts";
export { type Leak, type LeakQuestion, type LeakyNight, nightOfLeak } from "./night-of-leak.ts";
export { type NightOptions, type NightRunning, nightRunning } from "./night-running.ts";
export {
  type FlowingPoint,
  type IdlePoint,
  type OperatingOptions,
  type OperatingPoint,
  operatingPoint,
} from "./operating-point.ts";
export { orificeFlowLPerH } from "./orifice-flow.ts";
export {
  idealOsmoticPressureKPa,
  osmoticFromConductivityPsi,
  osmoticRuleOfThumbPsi,
} from "./osmotic-estimates.ts";
export { permeatePh } from "./permeate-ph.ts";
export { polytropicShare } from "./polytropic-share.ts";
export { type BestCharge, bestCharge, type ChargeQuestion } from "./questions/best-charge.ts";
export { feedInSeason } from "./questions/feed-in-season.ts";
export {
  type HighestRecovery,
  highestRecovery,
  type ScaleMineral,
  type ScalingLimits,
} from "./questions/highest-recovery.ts";
export {
  type RestrictorAnswer,
  type RestrictorQuestion,
  restrictorForRecovery,
  type Season,
} from "./questions/restrictor-for-recovery.ts";
export { type Felt, type Gain, type Help, type HelpQuestion, willItHelp } from "./questions/will-it-help.ts";
export { recovery } from "./recovery.ts";
export { rejection } from "./rejection.ts";
export { type Restrictor, restrictorLPerH, usualRating } from "./restrictor.ts";
export {
  RESTRICTOR_RANGES,
  type RestrictorFound,
  restrictorAsFound,
  restrictorMeasures,
} from "./restrictor-as-found.ts";
export { type DrainRead, restrictorAsRead } from "./restrictor-as-read.ts";
export { saltDiffusivity } from "./salt-diffusivity.ts";
export { saltTemperatureFactor } from "./salt-temperature-factor.ts";
export {
  shutOffIsClosed,
  shutOffPressureKPaGauge,
  usualHysteresis,
  usualShutOffRatio,
  usualShutOffRatioWithPump,
} from "./shut-off.ts";
export { simpleUnit } from "./simple-unit.ts";
export type { Situation } from "./situation.ts";
export { type ChannelTransport, type SpacerChannel, spacerChannelTransport } from "./spacer-channel.ts";
export { standardPermeateFlow } from "./standard-permeate-flow.ts";
export { type PassageConditions, standardSaltPassage } from "./standard-salt-passage.ts";
export { standardVesselDrop } from "./standard-vessel-drop.ts";
export { type Standardised, type StandardReadings, standardise } from "./standardise.ts";
export { type HoldUp, type Standby, type StandingStart, standby, usualHoldUp } from "./standby.ts";
export { standingLeakLPerH } from "./standing-leak.ts";
export { standingPressureKPaGauge } from "./standing-pressure.ts";
export {
  bestAirChargeKPaGauge,
  storedLitres,
  type Tank,
  tankPressureKPaGauge,
  usableLitres,
} from "./tank.ts";
export { tankFullKPaGauge } from "./tank-full.ts";
export {
  defaultTemperatureForm,
  isTemperatureFormId,
  type TemperatureForm,
  type TemperatureFormId,
  temperatureCorrection,
  temperatureForms,
} from "./temperature-correction.ts";
export { type Tube, type TubeDrop, tubeDrop } from "./tube-drop.ts";
export type { Booster, Conditions, PermeatePump, Unit } from "./unit.ts";
export { type PortId, type PortReadings, unitReadings } from "./unit-readings.ts";
export { usualBooster } from "./usual-booster.ts";
export { usualDrainLPerH } from "./usual-drain.ts";
export { usualPermeatePump, usualPermeatePumpScatter } from "./usual-permeate-pump.ts";
export { wallRejection } from "./wall-rejection.ts";
export { waterDensityKgPerM3 } from "./water-density.ts";
export { waterViscosityMPaS } from "./water-viscosity.ts";
