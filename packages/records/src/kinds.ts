/** The scale a dissolved-solids meter shows. */
export type TdsScale = "NaCl" | "KCl" | "442";

/** A place on the line of water where something is read. Plain ids; a unit may lack any of them. */
export type PortId =
  | "feed"
  | "beforeFilter"
  | "afterFilter"
  | "drain"
  | "permeateToWaste"
  | "tank"
  | "delivered"
  | "meter"
  | "hourMeter"
  | "bottle";

export type Phase = "asFound" | "asLeft";

/** What is read. Each slot has one quantity; `SLOTS` in `slots.ts` says which. */
export type SlotId =
  | "feedTds"
  | "feedTemperature"
  | "chlorineBefore"
  | "chlorineAfter"
  | "staticPressure"
  | "beforeFilterPressure"
  | "afterFilterPressure"
  | "permeateFlow"
  | "drainFlow"
  | "permeateTds"
  | "deliveredTds"
  | "tankFullPressure"
  | "drawnVolume"
  | "tankAfterPressure"
  | "airCharge"
  | "waterMeter"
  | "hardness"
  | FurtherSlotId;

/** Read only when wanted: never asked by the ordinary visit. */
export type FurtherSlotId =
  | "firstDrawTds"
  | "standardSolution"
  | "drainTds"
  | "drainFlowFeedClosed"
  | "drainFlowTankFull"
  | "postFilterPressure"
  | "deliveredFlow"
  | "chlorineFreeBefore"
  | "chlorineFreeAfter"
  | "deliveredChlorine"
  | "deliveredHardness"
  | "deliveredAlkalinity"
  | "deliveredChloride"
  | "deliveredSilica"
  | "deliveredPh"
  | "feedAlkalinity"
  | "feedChloride"
  | "feedSilica"
  | "feedPh"
  | "chloramine"
  | "peakPressure"
  | "nightPressure"
  | "drainGap"
  | "drainHeight"
  | "hourCounter";

/** One atomic register: a reading with everything needed to judge it later. */
export interface Reading {
  /** Exactly as typed. */
  readonly raw: string;
  /** Parsed; null while only a photo exists. */
  readonly value: number | null;
  /** Unit symbol of the trade: "psi", "ppm", "°C", "s", "mL/min", "L", "m³", "mg/L", "gpg" … */
  readonly unit: string;
  /** For dissolved solids. */
  readonly scale?: TdsScale;
  /** For flows timed with a cup: `value` is seconds for this volume. */
  readonly volumeL?: number;
  /** True when the test showed nothing; `value` is then the detection step. */
  readonly notDetected?: boolean;
  readonly instrument?: string;
  readonly port: PortId;
  /** ISO 8601 with offset. */
  readonly at: string;
  readonly photo?: string;
  /** The technician does not trust it; kept, not used. */
  readonly doubtful?: boolean;
}

export interface Site {
  readonly name: string;
  readonly code?: string;
  readonly altitudeM?: number;
  readonly waterSource?: string;
  readonly askName?: string;
  readonly askRole?: string;
  readonly askPhone?: string;
  readonly timeZone?: string;
  readonly notes?: string;
  /** Name of the chain or district the site belongs to; its sites have codes. */
  readonly chain?: string;
  readonly address?: string;
  /** Who gets a copy of every record: head office, landlord, service of the appliance. */
  readonly copiesTo?: string;
  readonly key?: string;
  readonly hours?: string;
  /** The owner's language, for the record they get ("es"); without it, English. */
  readonly language?: string;
}

/** Who owns a site from a day on. What was before that day belongs to the owner before. */
export interface Ownership {
  readonly site: string;
  readonly owner: string;
  readonly since: string;
  /** True when this owner may see what was before. */
  readonly seesEarlier?: boolean;
}

export type ApplianceType = "combiOven" | "steamer" | "coffee" | "ice" | "dishwasher" | "dispenser" | "other";

export interface Appliance {
  readonly site: string;
  readonly point: string;
  readonly name: string;
  readonly type: ApplianceType;
  readonly minimumPressureKPaGauge?: number;
  /** Hottest temperature its water meets; wetted steel and copper as the manual says. */
  readonly hottestC?: number;
  readonly steelGrade?: "304" | "316";
  readonly copperOrBrass?: boolean;
  /** What its own counter counts, where it has one: hours of running, or litres. */
  readonly counter?: "h" | "L";
  /** What it takes on a busy day, L, as the kitchen tells it, and between which times of the day ("06:30"). */
  readonly litresPerDay?: number;
  readonly usedFrom?: string;
  readonly usedUntil?: string;
  /** An appliance type of the book, whose limits count for this one too. */
  readonly model?: string;
}

/** A type of appliance: its limits and minimum pressure are set once, with source and date, and count for all of its kind. */
export interface ApplianceModel {
  readonly name: string;
  readonly type: ApplianceType;
  readonly minimumPressureKPaGauge?: number;
  readonly source?: string;
  readonly sourceDate?: string;
}

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

export type LimitQuantity = "tds" | "hardness" | "alkalinity" | "chloride" | "chlorine" | "silica" | "pH";

/** One limit from an appliance's label; a child record of the appliance, or of an appliance type. */
export interface Limit {
  readonly appliance: string;
  readonly quantity: LimitQuantity;
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
  readonly scale?: TdsScale;
  readonly source: string;
  readonly sourceDate?: string;
}

/** Where a unit hangs. History follows the point and the unit's serial. */
export interface InstallationPoint {
  readonly site: string;
  readonly name: string;
  readonly where?: string;
  readonly bypassFitted?: boolean;
  /** Hash of the photo that shows where it hangs. */
  readonly photo?: string;
  readonly isolationValve?: string;
  readonly drain?: string;
}

export type MoveWhy = "fitted" | "moved" | "swapped" | "lent" | "back" | "store" | "removed";

/** A unit came to a point, or left for the store (no point), on a day. */
export interface Move {
  readonly unit: string;
  readonly from?: string;
  readonly to?: string;
  readonly on: string;
  readonly why: MoveWhy;
  /** For a loan: the day it should be back. */
  readonly until?: string;
}

/** A visit planned for a day. */
export interface Plan {
  readonly unit: string;
  /** ISO date. */
  readonly on: string;
  /** "06:30". */
  readonly at?: string;
  readonly reason?: string;
}

/** One reading of a known standard in the morning: it covers the readings of that instrument on that day. */
export interface MeterCheck {
  readonly instrument: string;
  /** ISO 8601 instant. */
  readonly at: string;
  readonly standard: number;
  readonly read: number;
  readonly unit: string;
}

export type VanWhy = "counted" | "loaded" | "returned" | "ordered";

/** Parts that came into the van or left it otherwise than into a unit; what a visit fits is taken off by its own record. */
export interface VanEntry {
  readonly role: PartRole;
  readonly why: VanWhy;
  /** How many; "counted" says how many are there. */
  readonly count: number;
  /** ISO 8601 instant. */
  readonly at: string;
}

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
  readonly meterAtFittingM3?: number;
  /** Hours of running it is made for: a UV lamp, what an appliance counts. */
  readonly ratedHours?: number;
  readonly hoursAtFitting?: number;
  readonly intervalMonths?: number;
}

/** "kit": drops, strips or a photometer for what is dissolved. */
export type InstrumentKind =
  | "tds"
  | "pressure"
  | "temperature"
  | "flow"
  | "chlorine"
  | "hardness"
  | "kit"
  | "pH"
  | "meter"
  | "length";

export interface Instrument {
  readonly name: string;
  readonly kind: InstrumentKind;
  readonly unit: string;
  readonly scale?: TdsScale;
  readonly accuracyPercentOfReading?: number;
  readonly accuracyPercentOfFullScale?: number;
  readonly fullScale?: number;
  readonly resolution?: number;
  readonly lastCheckedOn?: string;
  /** The one taken up first for its kind. */
  readonly usual?: boolean;
}

export type VisitKind =
  | "annual"
  | "filterOnly"
  | "callOut"
  | "quality"
  | "commissioning"
  | "survey"
  | "returnVisit"
  | "shutDown"
  | "restart"
  | "removal"
  | "noAccess";

/** A visit; its readings, answers and photos are fields of it, see `VisitFields`. */
export interface Visit {
  readonly unit: string;
  readonly point: string;
  readonly kind: VisitKind;
  readonly startedAt: string;
  readonly endedAt?: string;
  readonly technician?: string;
  readonly closed?: boolean;
  /** The customer's order number, for the office's bill. */
  readonly orderNumber?: string;
  /** What a quote is wanted for. */
  readonly quoteWanted?: string;
}

export interface PersonAsked {
  readonly name: string;
  readonly role: string;
}

/** Valves whose state is written down when a visit ends. */
export type ValveId = "feed" | "tank" | "bypass" | "drain" | "sample" | "blend";

/** Answers of a visit, by step. Each is one field `answer:<id>`. */
export interface Answers {
  readonly inUse: "inUse" | "bypassed";
  readonly bypass: PersonAsked & {
    readonly decision: "keepBypassed" | "putInUse";
    /** By what right the person may allow it: "owner", "tenant", "headOffice", "keyHolder". */
    readonly authority?: string;
    /** Asked on the telephone, not on the spot. */
    readonly byPhone?: boolean;
    /** The words the person used. */
    readonly words?: string;
    readonly until?: string;
    readonly seal?: string;
    /** True when it was said that no seal is fitted. */
    readonly noSeal?: boolean;
    /** Day since which water goes past the unit, as far as anybody knows. */
    readonly since?: string;
    /** Litres a day that go to the appliances, for the upper bound of scale. */
    readonly litresPerDay?: number;
  };
  readonly inspection: "asItShouldBe";
  /** The tank when the first samples were taken, nothing touched yet. */
  readonly tankState: "full" | "filling" | "unknown";
  readonly roOptional: PersonAsked & { readonly decision: "keep" | "takeOut" | "undecided" };
  readonly valvesAsLeft: {
    readonly feed: "open" | "shut";
    readonly tank: "open" | "shut";
    readonly bypass: "open" | "shut";
    readonly sample: "open" | "shut";
    /** The valve of the drain line, where it was looked at. */
    readonly drain?: "open" | "shut";
    /** The blend valve of a unit that has one; shut means nothing is mixed in. */
    readonly blend?: "open" | "shut";
    /** Seal number on the bypass. */
    readonly seal?: string;
    /** The appliances were seen filling after the valves were set. */
    readonly appliancesFill?: "seen" | "notSeen";
  };
  readonly signature: {
    readonly kind: "signed" | "notPresent" | "refused";
    readonly name?: string;
    readonly role?: string;
    readonly path?: string;
  };
  readonly filling: { readonly state: "seen" | "notSeen" | "reported"; readonly expectedHours?: number };
  /** Nobody let in, or broken off: why, and when. */
  readonly noAccess: { readonly reason: string; readonly at: string; readonly note?: string };
  /** When hands were there. `minutes` is what was worked, which may be less than departure minus arrival. */
  readonly times: { readonly arrivedAt: string; readonly leftAt?: string; readonly minutes?: number };
  /** Who else was there. */
  readonly others: { readonly names: string };
  /** Why there is no photo of a leak from before it was touched. */
  readonly leakPhoto: { readonly reason: string };
  readonly complaint: Ticked;
  readonly premises: Ticked;
  /** What the appliances' own counters showed, by appliance. */
  readonly counters: Readonly<Record<string, { readonly value: number; readonly unit: string }>>;
  readonly shown: Ticked;
  readonly drips: {
    readonly minutes: number;
    readonly pressure?: number;
    readonly unit?: string;
    readonly seen: "none" | "some";
  };
  readonly acceptance: PersonAsked & {
    readonly decision: "accepted" | "withReserve" | "refused";
    readonly note?: string;
  };
}

/** Items of a list that were ticked, others that were looked at and are not so, and words about them. */
export interface Ticked {
  readonly items: readonly string[];
  readonly not?: readonly string[];
  readonly note?: string;
}

/** Something at the inspection that is not as it should be: field `exception:<item>`. */
export interface Exception {
  readonly state: "corrected" | "left" | "found";
  readonly note?: string;
  readonly photo?: string;
}

/** What the hands did about a proposed task: field `work:<task>`. */
export interface Work {
  readonly state: "done" | "left";
  readonly reason?: string;
  readonly lot?: string;
  /** Serial number of the part fitted. */
  readonly serial?: string;
  readonly part?: string;
  /** New value when a setting was made, e.g. air charge, with its unit. */
  readonly value?: number;
  readonly unit?: string;
}

/** One step of a procedure as it was done: field `step:<task>:<step>`. */
export interface StepDone {
  /** ISO 8601 instant. */
  readonly at: string;
  readonly value?: number;
  readonly unit?: string;
  /** A test that showed nothing; `value` is then the detection step. */
  readonly notDetected?: boolean;
  readonly minutes?: number;
  readonly text?: string;
  /** Numbers a computed value was made from, for its arithmetic. */
  readonly from?: Readonly<Record<string, number>>;
}

/** Waiting that runs by itself: field `timer:<id>`. All instants are ms since 1970 UTC, so no change of the clock's zone moves them. */
export interface Timer {
  /** What is waited for: "tankDraining", "toWaste", "carbonRinse", "contact", "filling". */
  readonly what: string;
  readonly startedMs: number;
  readonly durationMs: number;
  /** How far the phone's clock was seen to jump while this ran; taken off again. */
  readonly jumpedMs?: number;
  readonly stoppedMs?: number;
  /** The task it belongs to. */
  readonly task?: string;
}

/** A photo wanted or taken: field `photo:<id>`. `hash` is null until the bytes are kept. */
export interface PhotoNote {
  readonly for: string;
  readonly hash: string | null;
  readonly at: string;
}

/** A point left open at a visit; it comes back until closed or refused by a named person. */
export interface OpenPoint {
  readonly unit: string;
  readonly openedVisit: string;
  readonly code: string;
  readonly detail?: string;
  readonly owner?: string;
  readonly due?: string;
  /** The person was asked on the telephone. */
  readonly byPhone?: boolean;
  /** What was decided about an advice that was not refused. */
  readonly agreed?: "accepted" | "undecided";
  readonly closedVisit?: string;
  readonly closedOn?: string;
  readonly refusedBy?: string;
  readonly refusedRole?: string;
  readonly refusedOn?: string;
  readonly refusedVisit?: string;
  /** The words the person used. */
  readonly refusedWords?: string;
  /** Looked at again and left open. */
  readonly keptVisit?: string;
  readonly keptOn?: string;
  readonly keptReason?: string;
}

/** A frozen service record: `json` is the canonical text whose SHA-256 is `mark`. */
export interface ServiceRecordEntry {
  readonly visit: string;
  readonly unit: string;
  readonly revision: number;
  readonly mark: string;
  readonly json: string;
  readonly issuedAt: string;
}

/** Settings of the company or technician: one record with id "settings". */
export interface Settings {
  readonly technician?: string;
  /** Where a kitchen rings. */
  readonly phone?: string;
  readonly pressureUnit?: "psi" | "bar" | "kPa";
  readonly temperatureUnit?: "°C" | "°F";
  readonly decimalSign?: "." | ",";
  readonly leftHand?: boolean;
  readonly temperatureForm?: string;
  readonly shutOffRatio?: number;
  readonly filterDropLimitKPa?: number;
  readonly flowRatioLimit?: number;
  readonly saltRatioLimit?: number;
}

/** How often the company found each cause, as counted up to a day: one record a version, the newest counts. */
export interface CauseCounts {
  readonly version: number;
  /** ISO date. */
  readonly asOf: string;
  /** By cause. */
  readonly found: Readonly<Record<string, number>>;
  /** How many found causes the assumed frequencies are worth. */
  readonly assumedWorth: number;
}

/** What a sensor wrote by itself, taken in from its file as one record. */
export interface SensorLog {
  readonly unit: string;
  readonly name: string;
  readonly takenOn: string;
  readonly lines?: readonly SensorLine[];
}

export interface SensorLine {
  /** ISO 8601 instant. */
  readonly at: string;
  readonly value?: number;
  readonly unit?: string;
  /** The text of an alarm. */
  readonly alarm?: string;
}

export interface Kinds {
  readonly site: Site;
  readonly appliance: Appliance;
  readonly limit: Limit;
  readonly waterAnalysis: WaterAnalysisEntry;
  readonly point: InstallationPoint;
  readonly unit: Unit;
  readonly part: Part;
  readonly instrument: Instrument;
  readonly visit: Visit;
  readonly openPoint: OpenPoint;
  readonly serviceRecord: ServiceRecordEntry;
  readonly settings: Settings;
  readonly ownership: Ownership;
  readonly model: ApplianceModel;
  readonly move: Move;
  readonly plan: Plan;
  readonly meterCheck: MeterCheck;
  readonly causeCounts: CauseCounts;
  readonly vanEntry: VanEntry;
  readonly sensorLog: SensorLog;
}

export type KindId = keyof Kinds;
