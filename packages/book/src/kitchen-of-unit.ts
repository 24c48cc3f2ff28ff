import { type Context, type UnitAsRead, unitAsRead } from "@tapside/assessment";
import { evenlyBetween, type Kitchen, LITRES_RELATIVE, MADE_RELATIVE, type Use } from "@tapside/kitchen";
import { convert, known, mapOutcome, missing, type Outcome } from "@tapside/quantities";
import type { UnitFile } from "@tapside/records";
import { type ApplianceUse, applianceUse } from "./appliance-use.ts";

type Appliance = UnitFile["appliances"][number];

/** Where an appliance's litres come from: told for a busy day, the mean of its own counter, or nowhere. */
export type LitresFrom = "told" | "counter" | "nowhere";

interface Told {
  readonly appliance: string;
  readonly name: string;
  readonly from: LitresFrom;
  readonly use?: Use;
}

/** A unit with its kitchen, as the records tell them. */
export interface KitchenOfUnit extends Kitchen {
  /** Relative standard uncertainty of what the unit makes. */
  readonly madeRelative: number;
  readonly told: readonly Told[];
  readonly asRead: UnitAsRead;
}

/** What every appliance behind a unit takes, by what is told of it. */
export function usesOf(file: UnitFile): readonly Told[] {
  const counters = applianceUse(file);
  return file.appliances.map((one) =>
    toldOf(
      one,
      counters.find(({ appliance }) => appliance === one.id),
    ),
  );
}

/**
 * The kitchen a unit feeds: its appliances' litres as told, else as their own counters say; the unit as last read, in the
 * coldest water it was ever read in, when it makes least.
 *
 * Refused and missing: as `unitAsRead`; missing "appliance.litresPerDay" where no appliance's litres are known.
 */
export function kitchenOfUnit(file: UnitFile, context: Context): Outcome<KitchenOfUnit> {
  const told = usesOf(file);
  const uses = told.flatMap(({ use }) => use ?? []);
  if (uses.length === 0) return missing("appliance.litresPerDay");
  return mapOutcome(unitAsRead(file, context), (asRead) => {
    const temperatureC = coldestReadC(file, asRead.conditions.temperatureC);
    return known({
      unit: asRead.unit,
      situation: { ...asRead, conditions: { ...asRead.conditions, temperatureC } },
      uses,
      madeRelative: madeRelativeOf(asRead),
      told,
      asRead,
    });
  });
}

function madeRelativeOf({ visit, unit }: UnitAsRead): number {
  const known = visit === undefined ? MADE_RELATIVE.nameplate : MADE_RELATIVE.read;
  return unit.permeatePump ? Math.hypot(known, MADE_RELATIVE.permeatePump) : known;
}

function toldOf(appliance: Appliance, counter: ApplianceUse | undefined): Told {
  const base = { appliance: appliance.id, name: appliance.name ?? "" };
  const counted = counter?.unit === "L" ? (counter.perDay ?? 0) : 0;
  const told = appliance.litresPerDay ?? 0;
  if (told > 0) return { ...base, from: "told", use: useOf(appliance, told, LITRES_RELATIVE.told) };
  if (counted > 0)
    return { ...base, from: "counter", use: useOf(appliance, counted, LITRES_RELATIVE.meanOfCounter) };
  return { ...base, from: "nowhere" };
}

const useOf = (appliance: Appliance, litres: number, relative: number): Use => ({
  name: appliance.name ?? "",
  litresPerDay: { value: litres, u: relative * litres },
  ...hoursOf(appliance),
});

function hoursOf({ usedFrom, usedUntil }: Appliance): Pick<Use, "hours"> {
  const hours = evenlyBetween(hourOfDay(usedFrom), hourOfDay(usedUntil));
  return hours.kind === "known" ? { hours: hours.value } : {};
}

/** "06:30" → 6.5; anything else is no hour. */
function hourOfDay(time = ""): number {
  const [, hours, minutes] = /^(\d{1,2}):(\d{2})$/.exec(time) ?? [];
  return hours === undefined ? Number.NaN : Number(hours) + Number(minutes) / 60;
}

/** The coldest feed water read at this unit, °C. */
function coldestReadC({ visits }: UnitFile, lastC: number): number {
  const read = visits.flatMap(({ readings: { asFound, asLeft } }) =>
    [asFound, asLeft].flatMap(({ feedTemperature: one }) => {
      if (!one || one.doubtful || typeof one.value !== "number") return [];
      const celsius = convert(one.value, one.unit, "°C");
      return celsius.kind === "known" ? [celsius.value] : [];
    }),
  );
  return Math.min(lastC, ...read);
}
