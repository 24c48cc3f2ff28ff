import type { PortId } from "./readings.ts";

export interface Unit {
  readonly point: string;
  readonly name: string;
  readonly serial?: string;
  readonly fittedOn?: string;
  /** The nameplate at its own test conditions. */
  readonly ratedPermeateLPerH?: number;
  readonly ratedRejectLPerH?: number;
  readonly ratedRejectionPercent?: number;
  /** Recovery on the plate, where it gives this instead of a drain flow. */
  readonly ratedRecoveryPercent?: number;
  readonly testPressureKPaGauge?: number;
  readonly testTemperatureC?: number;
  readonly testFeedMgPerL?: number;
  readonly membraneAreaM2?: number;
  /** Two equal elements, one behind or beside the other: the nameplate's flows and area are those of one. */
  readonly twoElements?: boolean;
  /** How two elements lie: side by side each has the label's drain flow, one behind the other they share it. Not said = as side by side. */
  readonly elementArrangement?: ElementArrangement;
  readonly tankL?: number;
  /** Two equal tanks on one line: volume and acceptance are those of one. */
  readonly twoTanks?: boolean;
  /** A tank without air pressure, filled to its float, with a pump of its own behind it. */
  readonly ventedTank?: boolean;
  /** A pump between element and tank, driven by the concentrate's flow: the element does not feel the tank's pressure. */
  readonly permeatePump?: boolean;
  /** A booster pump behind the filters and their gauge, by two points of its curve; both or there is none. */
  readonly boosterShutOffRiseKPa?: number;
  readonly boosterOpenFlowLPerH?: number;
  /** Its switch keeps it off below this feed pressure. */
  readonly boosterOffBelowKPaGauge?: number;
  readonly tankMaximumAcceptanceL?: number;
  readonly tankPlatePressureKPaGauge?: number;
  /** Shut-off closes at this share of the feed pressure (gauge). Usual 0.60 to 0.67. */
  readonly shutOffRatio?: number;
  /** Restrictor as rated, or as measured at a pressure. */
  readonly restrictorLPerH?: number;
  readonly restrictorAtKPaGauge?: number;
  /** What hangs there. Not said = as rated. */
  readonly restrictorKind?: RestrictorKind;
  /** Of a measured one: how it passes water, and the water it was measured in. */
  readonly restrictorLaw?: RestrictorLaw;
  readonly restrictorAtC?: number;
  readonly restrictorBoreMm?: number;
  readonly restrictorLengthM?: number;
  /** Lines with a length take pressure; without a bore they have the usual one. */
  readonly feedTubeLengthM?: number;
  readonly feedTubeBoreMm?: number;
  readonly permeateTubeLengthM?: number;
  readonly permeateTubeBoreMm?: number;
  readonly drainTubeLengthM?: number;
  readonly drainTubeBoreMm?: number;
  readonly outletTubeLengthM?: number;
  readonly outletTubeBoreMm?: number;
  /** Ports that do not exist: never asked again. */
  readonly portsAbsent?: readonly PortId[];
  readonly remineraliser?: boolean;
  readonly blendValve?: boolean;
  /** Share of feed water in the mix behind the blend valve, %. Not said = not known. */
  readonly blendPercent?: number;
  readonly temperatureForm?: string;
  /** Where it lies while it hangs nowhere: shelf, van, workshop. */
  readonly storedAt?: string;
  /** Short code of the QR sticker on the box. */
  readonly sticker?: string;
}

export type ElementArrangement = "parallel" | "series";

export type RestrictorKind = "rated" | "capillary" | "orifice" | "measured";

/** As a sharp hole, or as a fine tube that slows in cold water. */
export type RestrictorLaw = "orifice" | "laminar";

export type PartRole =
  | "sediment"
  | "carbon"
  | "scaleInhibitor"
  | "element"
  | "postCarbon"
  | "remineraliser"
  | "softener"
  | "uvLamp"
  | "tank"
  | "restrictor"
  | "checkValve"
  | "shutOff";

/** A fitted part: a cartridge in the chain, the element, the tank. A swap retires one record and adds another. */
export interface Part {
  readonly unit: string;
  readonly role: PartRole;
  readonly position?: number;
  readonly fittedOn?: string;
  readonly fittedVisit?: string;
  readonly removedOn?: string;
  readonly removedVisit?: string;
  readonly lot?: string;
  readonly serial?: string;
  readonly ratedLitres?: number;
  /** Chlorine at which the carbon is rated, mg/L. Capacity goes as its inverse. */
  readonly ratedChlorineMgPerL?: number;
  /** Of a scale inhibitor: saturation index of calcite in the concentrate that its label says it holds. */
  readonly heldCalciteIndex?: number;
  readonly meterAtFittingM3?: number;
  /** Hours of running it is made for: a UV lamp, what an appliance counts. */
  readonly ratedHours?: number;
  readonly hoursAtFitting?: number;
  readonly intervalMonths?: number;
}
