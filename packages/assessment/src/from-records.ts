import { known, mapOutcome, missing, type Outcome, type Uncertain } from "@tapside/quantities";
import type { SlotId, UnitFile } from "@tapside/records";
import {
  atmosphericPressureKPa,
  type Booster,
  boosterByTwoPoints,
  boosterRiseKPa,
  defaultTemperatureForm,
  type Element,
  elementFromNameplate,
  isTemperatureFormId,
  lineLossKPa,
  linesAsFound,
  type Nameplate,
  type Restrictor,
  type StandardReadings,
  type Tank,
  type TemperatureFormId,
  type Unit,
  usualDrainLPerH,
  usualPermeatePump,
} from "@tapside/reverse-osmosis";
import type { Context } from "./assessment.ts";
import { amountOf, type PhaseReadings } from "./internal/amounts.ts";
import { lineDropKPa } from "./internal/line-drop.ts";
import { remember } from "./internal/remember.ts";
import { rememberWith } from "./internal/remember-with.ts";
import { hasPermeatePump, shutOffRatioOf } from "./shut-off-ratio.ts";

/** Clean pre-filters: 10 kPa at 80 L/h, growing with flow to the 1.3. Common practice, no source; known to about 60 %. */
export const CLEAN_FILTER = { dropKPa: 10, atLPerH: 80, uRelative: 0.6 } as const;

/** The named temperature form in force: the unit's own, else the setting, else the house's. */
export function temperatureFormOf(file: UnitFile, context: Context): TemperatureFormId {
  for (const id of [file.unit.temperatureForm, context.settings.temperatureForm])
    if (id !== undefined && isTemperatureFormId(id)) return id;
  return defaultTemperatureForm;
}

export const atmosphereOf = (file: UnitFile): number => {
  const kPa = atmosphericPressureKPa(file.site.altitudeM ?? 0);
  return kPa > 20 ? kPa : 101.325;
};

/** A pump's curve is known to about a tenth of its rise. Common practice, no source. */
export const BOOSTER_RELATIVE = 0.1;

/** The booster as the record has it. */
export const boosterOf = (unit: Partial<UnitFile["unit"]>): Booster | undefined =>
  boosterByTwoPoints(unit.boosterShutOffRiseKPa, unit.boosterOpenFlowLPerH, unit.boosterOffBelowKPaGauge);

/** A pressure before the booster as it is behind it. The switch goes by the feed before the unit, where that was read. */
export function boosted(
  pressure: Uncertain,
  readings: PhaseReadings,
  file: Boosted,
  flowLPerH: number,
): Uncertain {
  const booster = boosterOf(file.unit);
  if (!booster) return pressure;
  const feed = amountOf("beforeFilterPressure", readings, file);
  const rise = boosterRiseKPa(booster, (feed.kind === "known" ? feed.value : pressure).value, flowLPerH);
  return { value: pressure.value + rise, u: Math.hypot(pressure.u, BOOSTER_RELATIVE * rise) };
}

type Boosted = Pick<UnitFile, "instruments" | "unit">;

/** Water through filters and pump with permeate running, L/h. */
function throughLPerH(readings: PhaseReadings, file: Boosted): number {
  const flow = ["permeateFlow", "drainFlow"].map((slot) => amountOf(slot as SlotId, readings, file));
  return flow.every((one) => one.kind === "known")
    ? flow.reduce((sum, one) => sum + (one.kind === "known" ? one.value.value : 0), 0)
    : CLEAN_FILTER.atLPerH;
}

/**
 * Pressure at the element: read after the filters, else before them less the drop of clean cartridges, its doubt widened; behind a
 * booster, that and the pump's rise.
 */
export function membranePressure(
  readings: PhaseReadings,
  file: Boosted,
): Outcome<Uncertain & { readonly assumedClean: boolean }> {
  const litres = throughLPerH(readings, file);
  const behind = (value: Uncertain, assumedClean: boolean) =>
    known({ ...boosted(value, readings, file, litres), assumedClean });
  const after = amountOf("afterFilterPressure", readings, file);
  if (after.kind === "known") return behind(after.value, false);
  const before = amountOf("beforeFilterPressure", readings, file);
  if (before.kind !== "known") return missing("afterFilterPressure");
  const dropKPa = CLEAN_FILTER.dropKPa * (litres / CLEAN_FILTER.atLPerH) ** 1.3;
  const u = Math.hypot(before.value.u, CLEAN_FILTER.uRelative * dropKPa);
  const lineKPa = lineDropKPa(linesAsFound(file.unit).feedTubes, litres, readings, file);
  return behind({ value: before.value.value - dropKPa - lineKPa, u }, true);
}

/** One phase's readings as the physics wants them; what is missing is named by slot. */
export const standardReadings = (readings: PhaseReadings, file: UnitFile): Outcome<StandardReadings> =>
  setOf(readings, file.instruments, file.unit);

const setOf = rememberWith(
  (readings: PhaseReadings, instruments: UnitFile["instruments"], unit: UnitFile["unit"]) => {
    const file = { instruments, unit };
    const slots = {
      permeateLPerH: amountOf("permeateFlow", readings, file),
      drainLPerH: amountOf("drainFlow", readings, file),
      membranePressureKPaGauge: membranePressure(readings, file),
      temperatureC: amountOf("feedTemperature", readings, file),
      feedMgPerL: amountOf("feedTds", readings, file),
      permeateMgPerL: amountOf("permeateTds", readings, file),
    };
    const absent = Object.values(slots).flatMap((one) => (one.kind === "missing" ? one.missing : []));
    if (absent.length > 0) return missing(...absent) as Outcome<StandardReadings>;
    const entries = Object.entries(slots).flatMap(([name, one]) =>
      one.kind === "known" ? [[name, one.value]] : [],
    );
    if (entries.length < Object.keys(slots).length)
      return Object.values(slots).find((one) => one.kind === "refused") as Outcome<never>;
    return known(Object.fromEntries(entries) as StandardReadings);
  },
);

export const RATING_RELATIVE = { flow: 0.09, salt: 0.22 } as const;

/** The nameplate as if it were a set of readings; labels are commonly good to 15–20 % in flow (common practice). */
export const nameplateAsReadings = (file: UnitFile): Outcome<StandardReadings> => plateOf(file.unit);

export const elementsOf = (unit: UnitFile["unit"]): number => (unit.twoElements ? 2 : 1);
/** Two side by side drain what two labels say, two behind each other share the flow of one. */
export const drainsOf = ({ twoElements, elementArrangement }: UnitFile["unit"]): number =>
  twoElements && elementArrangement !== "series" ? 2 : 1;
/** Share of feed behind the blend valve, where the record says it. */
export const blendFractionOf = ({ blendValve, blendPercent }: UnitFile["unit"]): number | undefined =>
  blendValve && blendPercent! > 0 && blendPercent! < 100 ? blendPercent! / 100 : undefined;
/** What is delivered is more than what came through the membrane, by nobody knows how much. */
export const mixUnknown = ({ unit }: Pick<UnitFile, "unit">): boolean =>
  Boolean(unit.remineraliser || (unit.blendValve && blendFractionOf(unit) === undefined));
const tanksOf = (unit: UnitFile["unit"]): number => (unit.twoTanks ? 2 : 1);

/** A label's drain is known without doubt, one that was read is not. */
export const isLabel = (set: StandardReadings): boolean => !set.drainLPerH!.u;

const plateOf = rememberWith((unit: UnitFile["unit"]): Outcome<StandardReadings> => {
  const absent = (
    [
      "ratedPermeateLPerH",
      "ratedRejectionPercent",
      "testPressureKPaGauge",
      "testTemperatureC",
      "testFeedMgPerL",
    ] as const
  ).filter((field) => !(unit[field]! > 0));
  if (absent.length > 0) return missing(...absent.map((field) => `unit.${field}`));
  const permeate = unit.ratedPermeateLPerH! * elementsOf(unit);
  const feed = unit.testFeedMgPerL!;
  const product = feed * (1 - unit.ratedRejectionPercent! / 100);
  return known({
    permeateLPerH: { value: permeate, u: RATING_RELATIVE.flow * permeate },
    drainLPerH: {
      value:
        unit.ratedRejectLPerH === undefined
          ? usualDrainLPerH(permeate, unit.ratedRecoveryPercent)
          : unit.ratedRejectLPerH * elementsOf(unit),
      u: 0,
    },
    membranePressureKPaGauge: { value: unit.testPressureKPaGauge!, u: 0 },
    temperatureC: { value: unit.testTemperatureC!, u: 0 },
    feedMgPerL: { value: feed, u: 0 },
    permeateMgPerL: { value: product, u: RATING_RELATIVE.salt * product },
  });
});

const fitted = remember((plate: Nameplate) => elementFromNameplate(plate), 50);

/** The element whose "label" is a set of readings: commissioning, an earlier visit, or the nameplate itself. */
export function elementFrom(
  set: StandardReadings,
  file: UnitFile,
  form: TemperatureFormId,
): Outcome<Element> {
  const { permeateTubes = [] } = isLabel(set) ? {} : linesAsFound(file.unit);
  const backKPa = permeateTubes.reduce(
    (sum, tube) => sum + lineLossKPa(tube, set.permeateLPerH!.value, set.temperatureC!.value),
    0,
  );
  return fitted({
    permeateLPerH: set.permeateLPerH!.value,
    rejectLPerH: set.drainLPerH!.value,
    rejection: 1 - set.permeateMgPerL!.value / set.feedMgPerL!.value,
    pressureKPaGauge: set.membranePressureKPaGauge!.value - backKPa,
    temperatureC: set.temperatureC!.value,
    feedMgPerL: set.feedMgPerL!.value,
    ...(file.unit.membraneAreaM2! > 0 && { areaM2: file.unit.membraneAreaM2! * elementsOf(file.unit) }),
    temperatureForm: form,
  });
}

/** All its litres; two equal tanks at one charge are one of twice the volume. */
export const tankLitres = ({ unit }: UnitFile): Outcome<number> =>
  unit.tankL! > 0 ? known(unit.tankL! * tanksOf(unit)) : missing("unit.tankL");

export const tankOf = (file: UnitFile, airChargeKPaGauge: number): Outcome<Tank> =>
  mapOutcome(tankLitres(file), (volumeL) => {
    const { tankMaximumAcceptanceL, ventedTank } = file.unit;
    return known({
      volumeL,
      airChargeKPaGauge: ventedTank ? 0 : Math.max(0, airChargeKPaGauge),
      ...(tankMaximumAcceptanceL! > 0 && { maximumWaterL: tankMaximumAcceptanceL! * tanksOf(file.unit) }),
    });
  });

/**
 * The unit as physics, with clean pre-filters. Two equal elements are one of twice the area, behind or beside each other: at one feed and
 * drain flow the same water meets the same membrane, and a label says nothing of the friction along it.
 */
export function physicsUnit(
  file: UnitFile,
  context: Context,
  parts: { readonly element: Element; readonly restrictor: Restrictor; readonly tank?: Tank | undefined },
): Unit {
  const booster = boosterOf(file.unit);
  const blendFraction = blendFractionOf(file.unit);
  return {
    cartridges: [{ id: "preFilters", dropKPa: CLEAN_FILTER.dropKPa, atLPerH: CLEAN_FILTER.atLPerH }],
    elements: [parts.element],
    restrictor: parts.restrictor,
    shutOff: { ratio: shutOffRatioOf(file, context) },
    tanks: parts.tank ? [parts.tank] : [],
    atmosphericKPa: atmosphereOf(file),
    ...linesAsFound(file.unit),
    ...(file.unit.ventedTank && { storage: "vented" }),
    ...(booster && { booster }),
    ...(hasPermeatePump(file) && { permeatePump: usualPermeatePump }),
    ...(blendFraction && { blendFraction }),
  };
}
