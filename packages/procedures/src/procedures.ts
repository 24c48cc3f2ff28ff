/** What a step asks for besides being done. */
export type StepAsks = "dose" | "strip" | "stripZero" | "litres" | "minutes" | "lot";

/** One step of a procedure: the cautions that stand where the hand is, and what runs or is asked meanwhile. */
export interface ProcedureStep {
  readonly id: string;
  readonly cautions: readonly string[];
  readonly asks?: StepAsks;
  /** Waiting that starts here, with its usual minutes (common practice, no source; a label's own figure goes before). */
  readonly wait?: { readonly what: string; readonly minutes: number };
}

const step = (
  id: string,
  cautions: readonly string[] = [],
  more: Omit<ProcedureStep, "id" | "cautions"> = {},
): ProcedureStep => ({
  id,
  cautions,
  ...more,
});

const hold = step("hold", ["appliancesHeld", "hotSurfaces"]);
const toZero = step("toZero", ["pressureToZero", "wetElectricity"]);
const slowOn = step("slowOn", ["slowOn", "reducingValve", "wetFloor"]);
const drainTank = step("drainTank", ["tankEnergy"], { wait: { what: "tankDraining", minutes: 20 } });
const discard = step("discard", ["discardFirstWater"]);
const release = step("release", ["productUse"]);
const swapCartridge = step("swapCartridge", ["wetFloor", "hygiene"], { asks: "lot" });

/** Every procedure by the task it belongs to, in the order of hands. A task without one has only its cautions. */
const PROCEDURES: Readonly<Record<string, readonly ProcedureStep[]>> = {
  sanitise: [
    hold,
    toZero,
    step("partsOut", ["bleachNotThroughElement"]),
    step("dose", ["bleachNeverMixed", "unscentedOnly", "ventilate", "workingAlone"], { asks: "dose" }),
    step("fillDosed", ["noUse", "backflowLicensed"]),
    step("stripThere", [], { asks: "strip" }),
    step("contact", ["noUse"], { wait: { what: "contact", minutes: 30 }, asks: "minutes" }),
    step("rinse", ["rinseToZero"], { wait: { what: "rinse", minutes: 10 }, asks: "litres" }),
    step("stripZero", ["rinseToZero"], { asks: "stripZero" }),
    step("partsIn", ["hygiene", "rinseBeforeElement"]),
    discard,
    release,
  ],
  "replace:element": [
    hold,
    toZero,
    step("elementOut"),
    step("elementIn", ["hygiene"], { asks: "lot" }),
    slowOn,
    step("elementToWaste", ["discardFirstWater"], { wait: { what: "toWaste", minutes: 30 } }),
    discard,
  ],
  cartridge: [hold, toZero, swapCartridge, slowOn, step("counterReset")],
  "replace:carbon": [hold, toZero, swapCartridge, step("counterReset")],
  rinseCarbon: [
    step("lineToDrain", ["rinseBeforeElement"]),
    slowOn,
    step("carbonToDrain", ["rinseBeforeElement"], {
      wait: { what: "carbonRinse", minutes: 5 },
      asks: "litres",
    }),
    step("lineBack"),
  ],
  "replace:tank": [
    hold,
    toZero,
    drainTank,
    step("tankOut", ["tankHeavy", "workingAlone"]),
    step("airBeforeWater", ["handPumpOnly", "tankEnergy"]),
    step("tankIn", ["hygiene"], { asks: "lot" }),
    slowOn,
  ],
  setAirCharge: [hold, toZero, drainTank, step("pumpAir", ["handPumpOnly", "tankEnergy"])],
  discardTank: [
    step("fillTank", [], { wait: { what: "filling", minutes: 120 } }),
    step("emptyTank", ["hotSurfaces"], { wait: { what: "tankDraining", minutes: 20 } }),
    discard,
  ],
  rinsePreservative: [
    hold,
    step("lineToDrain", ["rinseBeforeElement"]),
    slowOn,
    step("carbonToDrain", [], { wait: { what: "carbonRinse", minutes: 5 }, asks: "litres" }),
    step("lineBack"),
    step("elementToWaste", ["discardFirstWater"], { wait: { what: "toWaste", minutes: 30 } }),
    step("firstTank", ["discardFirstWater", "productUse"], { wait: { what: "filling", minutes: 120 } }),
  ],
  restart: [
    hold,
    step("flushLine", ["stagnantWater"], { wait: { what: "flush", minutes: 5 } }),
    step("drainOld", ["stagnantWater", "tankEnergy"], { wait: { what: "tankDraining", minutes: 20 } }),
    step("lookInside", ["pressureToZero", "hygiene"]),
    step("iceOut", ["discardFirstWater", "productUse"]),
  ],
  shutDown: [
    hold,
    toZero,
    drainTank,
    step("elementKept", ["hygiene"]),
    step("powerOff", ["wetElectricity"]),
    step("labelHung", ["noUse"]),
  ],
  remove: [
    hold,
    toZero,
    step("drainTank", ["tankEnergy", "tankHeavy"], { wait: { what: "tankDraining", minutes: 20 } }),
    step("takeOff", ["wetFloor", "tankHeavy", "workingAlone"]),
    step("capLines", ["deadLegs", "backflowLicensed"]),
    step("disposeOld", ["disposal"]),
    step("stickerOff"),
  ],
};

/** The steps of a task, or none. Cartridges other than carbon share one procedure. */
export function procedureOf(taskId: string): readonly ProcedureStep[] {
  const stem = taskId.split(":").slice(0, 2).join(":");
  return (
    PROCEDURES[stem] ??
    (stem.startsWith("replace:") && stem !== "replace:uvLamp" ? PROCEDURES.cartridge! : [])
  );
}

/** Procedures taken one step at a time. The others are known by heart: one tap says all of it was done. */
const STEP_BY_STEP: ReadonlySet<string> = new Set([
  "sanitise",
  "restart",
  "rinsePreservative",
  "remove",
  "shutDown",
]);

export const isStepByStep = (taskId: string): boolean => STEP_BY_STEP.has(taskId);
