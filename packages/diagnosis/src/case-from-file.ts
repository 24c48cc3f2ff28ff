import { known, missing, type Outcome } from "@tapside/quantities";
import {
  absentPorts,
  type KeptVisit,
  type PartRole,
  type Phase,
  partsInService,
  type Reading,
  type SlotId,
  type UnitFile,
  USUAL_DRAW_L,
} from "@tapside/records";
import { complaintOf } from "./complaint-of.ts";
import type { Scene } from "./scene.ts";
import { signValue } from "./sign-value.ts";
import { type Readings, SIGN_IDS, SIGNS, type SignId } from "./signs.ts";
import { SLOT_OF_SIGN } from "./slot-of-sign.ts";
import { TEST_IDS, type TestId } from "./test-catalogue.ts";
import { unitOfFile } from "./unit-of-file.ts";
import { asUsual, usualOf } from "./usual-of.ts";

export interface FileCase {
  readonly scene: Scene;
  readonly readings: Readings;
}

/**
 * Signs of one phase of a visit, with the gas in the tank from what was drawn, and what was noted while finding the cause. What was
 * read before `since` is left out; what has no time counts.
 */
export function signsOf(visit: KeptVisit, phase: Phase, atmosphericKPa: number, since?: string): Readings {
  const slots = slotsSince(visit.readings[phase], since);
  const signs: Partial<Record<SignId, number>> = {};
  for (const [sign, slot] of Object.entries(SLOT_OF_SIGN) as [SignId, SlotId][]) {
    const value = signValue(slot, slots[slot]);
    if (value !== undefined) signs[sign] = value;
  }
  const gas = gasFromBucket(slots, atmosphericKPa);
  if (gas !== undefined) signs.gasL = gas;
  return { ...signs, ...notedSigns(visit, phase, since) };
}

type Slots = KeptVisit["readings"][Phase];

const isBefore = (at: unknown, since: string | undefined): boolean =>
  since !== undefined && typeof at === "string" && Date.parse(at) < Date.parse(since);

const slotsSince = (slots: Slots, since: string | undefined): Slots =>
  since === undefined
    ? slots
    : (Object.fromEntries(Object.entries(slots).filter(([, one]) => !isBefore(one?.at, since))) as Slots);

/** Gas at the full tank from litres drawn between two pressures: V = ΔV·P₂/(P₁ − P₂), absolute. Source: Boyle's law. */
function gasFromBucket(
  slots: Readonly<Partial<Record<SlotId, Reading>>>,
  atmosphericKPa: number,
): number | undefined {
  const drawn = slots.drawnVolume ? signValue("drawnVolume", slots.drawnVolume) : USUAL_DRAW_L;
  const full = signValue("tankFullPressure", slots.tankFullPressure);
  const after = signValue("tankAfterPressure", slots.tankAfterPressure);
  if (drawn === undefined || full === undefined || after === undefined || full <= after) return undefined;
  return (drawn * (after + atmosphericKPa)) / (full - after);
}

/** Field of the visit's answers that holds one sign as noted while finding the cause, in coherent units. */
export const noteOf = (sign: SignId, phase: Phase = "asFound"): string =>
  phase === "asFound" ? `cause.${sign}` : `cause.${phase}.${sign}`;

/** Field beside it that says the note is doubtful: kept, not used. */
export const doubtOf = (sign: SignId, phase: Phase = "asFound"): string => `${noteOf(sign, phase)}.doubtful`;

/** Field beside it that says when it was noted, ISO 8601. */
export const noteTimeOf = (sign: SignId, phase: Phase = "asFound"): string => `${noteOf(sign, phase)}.at`;

/** The answers that keep a note with its time; null takes both back. */
export const noteAnswers = (
  sign: SignId,
  phase: Phase,
  value: number | null,
  at: string,
): Readonly<Record<string, number | string | null>> => ({
  [noteOf(sign, phase)]: value,
  [noteTimeOf(sign, phase)]: value === null ? null : at,
});

function notedSigns(visit: KeptVisit, phase: Phase, since?: string): Readings {
  const answers = visit.answers as Readonly<Record<string, unknown>>;
  return Object.fromEntries(
    SIGN_IDS.flatMap((sign) => {
      const value = answers[noteOf(sign, phase)];
      const isUsed =
        typeof value === "number" &&
        Number.isFinite(value) &&
        answers[doubtOf(sign, phase)] !== true &&
        !isBefore(answers[noteTimeOf(sign, phase)], since);
      return isUsed ? [[sign, value as number]] : [];
    }),
  );
}

const months = (from: string | undefined, to: string | undefined): number | undefined => {
  const span = (Date.parse(to ?? "") - Date.parse(from ?? "")) / (30.44 * 86_400_000);
  return Number.isFinite(span) && span >= 0 ? span : undefined;
};

const given = <K extends string, V>(name: K, value: V | undefined) =>
  (value === undefined ? {} : { [name]: value }) as { readonly [P in K]?: V };

/** Ages and litres of the parts the water went through. */
function agesOf(file: UnitFile, visit: KeptVisit, phase: Phase, readings: Readings) {
  const fitted = (role: PartRole) => partsInService(file, visit, phase, role)[0];
  const element = months(fitted("element")?.fittedOn, visit.startedAt);
  const filter = months((fitted("sediment") ?? fitted("carbon"))?.fittedOn, visit.startedAt);
  return {
    ...given("elementYears", element === undefined ? undefined : element / 12),
    ...given("filterMonths", filter),
    ...given("carbonShare", carbonShare(fitted("carbon"), visit, readings)),
  };
}

function carbonShare(
  carbon: UnitFile["parts"][number] | undefined,
  visit: KeptVisit,
  readings: Readings,
): number | undefined {
  const meter = signValue("waterMeter", visit.readings.asFound.waterMeter);
  if (!carbon?.ratedLitres || carbon.meterAtFittingM3 === undefined || meter === undefined) return undefined;
  const chlorine = readings.chlorineBefore ?? carbon.ratedChlorineMgPerL ?? 1;
  const strength = carbon.ratedChlorineMgPerL ? Math.max(0.25, chlorine / carbon.ratedChlorineMgPerL) : 1;
  return Math.max(0, ((meter - 1000 * carbon.meterAtFittingM3) / carbon.ratedLitres) * strength);
}

const NEEDS_PORT: Readonly<Partial<Record<TestId, readonly string[]>>> = {
  afterFilterPressure: ["afterFilter"],
  beforeFilterPressure: ["beforeFilter"],
  drainFlow: ["drain"],
  drainTankFull: ["drain"],
  drainFeedClosed: ["drain"],
  drainLineOff: ["drain"],
  permeateTds: ["permeateToWaste"],
  permeateFlow: ["permeateToWaste"],
  throttledFeed: ["permeateToWaste"],
  tankFullPressure: ["tank"],
  bucket: ["tank"],
  airCharge: ["tank"],
  deliveredTds: ["delivered"],
  outletFlow: ["delivered"],
};

function impossibleTests(
  file: UnitFile,
  has: { readonly booster: boolean; readonly bypass: boolean },
): TestId[] {
  const absent: readonly string[] = absentPorts(file.unit);
  return TEST_IDS.filter(
    (id) =>
      NEEDS_PORT[id]?.some((port) => absent.includes(port)) ||
      (id === "elementPressure" && !has.booster) ||
      (id === "isolateBypass" && !has.bypass),
  );
}

/**
 * What one visit knows: the unit as its record has it, what is usual there, and every reading as a sign. Missing: the
 * visit, or anything to make the unit of (no label and no readings at commissioning).
 */
export function caseFromFile(
  file: UnitFile,
  visitId: string,
  phase: Phase = "asFound",
  since?: string,
): Outcome<FileCase> {
  const visit = file.visits.find((one) => one.id === visitId);
  if (!visit) return missing("visit");
  const unit = unitOfFile(file, visit, phase);
  if (unit.kind !== "known") return unit;
  const { atmosphericKPa } = unit.value.unit;
  const readings = signsOf(visit, phase, atmosphericKPa, since);
  const before = file.visits.filter((one) => (one.startedAt ?? "") < (visit.startedAt ?? ""));
  const earlier = before.reverse().map((one) => ({
    ...asUsual(signsOf(one, "asFound", atmosphericKPa), one),
    ...signsOf(one, "asLeft", atmosphericKPa),
  }));
  const usual = usualOf(earlier, readings);
  const blendValve = file.unit.blendValve ?? false;
  const bypass = blendValve || (file.point.bypassFitted ?? true);
  const scene: Scene = {
    ...unit.value,
    usual,
    softener: file.parts.some((part) => (part.role as string) === "softener"),
    remineraliser: file.unit.remineraliser ?? false,
    blendValve,
    ...given("complaint", complaintOf(visit)),
    ...agesOf(file, visit, phase, readings),
    impossible: impossibleTests(file, { booster: unit.value.unit.booster !== undefined, bypass }),
  };
  if (Object.values(usual).some((value) => !Number.isFinite(value))) return missing("usual");
  return known({ scene, readings: withoutLooksOfOthers(readings) });
}

/** Looks are 0 or 1 whatever was stored. */
const withoutLooksOfOthers = (readings: Readings): Readings =>
  Object.fromEntries(
    Object.entries(readings).map(([sign, value]) => [
      sign,
      SIGNS[sign as SignId].kind === "look" ? Number(value >= 0.5) : value,
    ]),
  );
