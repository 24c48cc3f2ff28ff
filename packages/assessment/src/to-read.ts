import type { Phase, SlotId, UnitFile, VisitKind } from "@tapside/records";
import { absentPorts, SLOTS, staysBypassed, withHourCounter } from "@tapside/records";
import type { Assessment, Task } from "./assessment.ts";
import { amountOf } from "./internal/amounts.ts";
import type { Visit } from "./internal/parts-in-service.ts";

type ToRead = Assessment["toRead"];

const MEMBRANE: readonly SlotId[] = ["permeateFlow", "drainFlow", "permeateTds"];
const PRESSURES: readonly SlotId[] = ["beforeFilterPressure", "afterFilterPressure"];

/** As found, in the order hands go: untouched, feed sample, bucket test (8 L unless said), flowing pressures, membrane. */
const AS_FOUND: Readonly<Record<VisitKind, readonly SlotId[]>> = {
  annual: [
    "deliveredTds",
    "tankFullPressure",
    "waterMeter",
    "feedTds",
    "feedTemperature",
    "chlorineBefore",
    "chlorineAfter",
    "tankAfterPressure",
    ...PRESSURES,
    ...MEMBRANE,
  ],
  filterOnly: ["feedTds", "deliveredTds", "waterMeter"],
  callOut: [
    "deliveredTds",
    "tankFullPressure",
    "waterMeter",
    "feedTds",
    "feedTemperature",
    "chlorineBefore",
    "chlorineAfter",
    ...PRESSURES,
    ...MEMBRANE,
  ],
  commissioning: [
    "feedTds",
    "feedTemperature",
    "hardness",
    "chlorineBefore",
    "chlorineAfter",
    "staticPressure",
    "nightPressure",
    "drainGap",
    "airCharge",
    "waterMeter",
    ...PRESSURES,
    ...MEMBRANE,
  ],
  quality: [
    "chlorineFreeAfter",
    "chlorineAfter",
    "chlorineFreeBefore",
    "chlorineBefore",
    "firstDrawTds",
    "deliveredTds",
    "waterMeter",
    "feedTds",
    "feedTemperature",
    ...PRESSURES,
    "permeateTds",
    "permeateFlow",
    "drainFlow",
  ],
  survey: [
    "peakPressure",
    "nightPressure",
    "feedTds",
    "feedTemperature",
    "hardness",
    "feedChloride",
    "chlorineBefore",
    "chloramine",
    "drainHeight",
  ],
  returnVisit: ["deliveredTds", "feedTds", "feedTemperature"],
  shutDown: ["waterMeter", "deliveredTds"],
  restart: ["waterMeter", "feedTds", "feedTemperature", "chlorineBefore", "chlorineAfter"],
  removal: ["waterMeter"],
  noAccess: [],
};

const AS_LEFT: Readonly<Record<VisitKind, readonly SlotId[]>> = {
  annual: ["afterFilterPressure", ...MEMBRANE],
  callOut: ["afterFilterPressure", ...MEMBRANE],
  filterOnly: ["afterFilterPressure"],
  commissioning: [],
  quality: ["chlorineAfter", "permeateFlow", "drainFlow", "permeateTds"],
  survey: [],
  returnVisit: ["afterFilterPressure", ...MEMBRANE, "deliveredTds"],
  shutDown: [],
  restart: ["beforeFilterPressure", ...MEMBRANE, "deliveredTds"],
  removal: [],
  noAccess: [],
};

/** Slots still unread in this kind of visit, in the order of hands; ports that are not there are never asked. */
export function toRead(file: UnitFile, visit: Visit, tasks: readonly Task[]): ToRead {
  const kind = visit.kind && visit.kind in AS_FOUND ? visit.kind : "annual";
  const bypassed = staysBypassed(visit);
  const asFound = bypassed ? (["feedTds", "feedTemperature", "waterMeter"] as const) : AS_FOUND[kind];
  const worked = Object.values(visit.work).some((one) => one.state === "done");
  const air = tasks.some((one) => one.id === "setAirCharge") || visit.work.setAirCharge?.state === "done";
  const asLeft = worked || tasks.length > 0 ? AS_LEFT[kind] : [];
  return [
    ...withHourCounter(withStatic(asFound, file, visit), file).map(
      (slot) => ({ phase: "asFound", slot }) as const,
    ),
    ...(bypassed ? [] : [...asLeft, ...(air ? (["airCharge"] as const) : [])]).map(
      (slot) => ({ phase: "asLeft", slot }) as const,
    ),
  ].filter(({ phase, slot }) => wanted(file, visit, phase, slot));
}

const STATIC_IF_BELOW_KPA = 50 * 6.894757;
const STATIC_IF_ABOVE_KPA = 75 * 6.894757;

/** Standing pressure is asked only when the flowing one is below 50 or above 75 psi. */
function withStatic(slots: readonly SlotId[], file: UnitFile, visit: Visit): readonly SlotId[] {
  const flowing = amountOf("beforeFilterPressure", visit.readings.asFound, file);
  if (slots.includes("staticPressure") || !slots.includes("beforeFilterPressure") || flowing.kind !== "known")
    return slots;
  const { value } = flowing.value;
  if (value >= STATIC_IF_BELOW_KPA && value <= STATIC_IF_ABOVE_KPA) return slots;
  return slots.flatMap((slot): readonly SlotId[] =>
    slot === "beforeFilterPressure" ? [slot, "staticPressure"] : [slot],
  );
}

function wanted(file: UnitFile, visit: Visit, phase: Phase, slot: SlotId): boolean {
  if (absentPorts(file.unit).includes(SLOTS[slot].port)) return false;
  if (visit.readings[phase][slot] !== undefined) return false;
  return !visit.skipped.includes(`${phase}:${slot}`);
}
