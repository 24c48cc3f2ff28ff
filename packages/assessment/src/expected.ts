import { converted, known, mapOutcome, missing, type Outcome, type Uncertain } from "@tapside/quantities";
import type { UnitFile } from "@tapside/records";
import {
  expectedReadings,
  type Interval,
  type Scatter,
  type StandardReadings,
  type Today,
  type Unit,
  usualScatter,
} from "@tapside/reverse-osmosis";
import type { Context, Expected, ExpectedId } from "./assessment.ts";
import { chargeToday } from "./charge-today.ts";
import { elementReference } from "./element-reference.ts";
import { pressureUnitOf } from "./figures.ts";
import {
  elementFrom,
  mixUnknown,
  physicsUnit,
  standardReadings,
  tankOf,
  temperatureFormOf,
} from "./from-records.ts";
import { amountOf, type PhaseReadings, scaleOf, usable } from "./internal/amounts.ts";
import { finiteRefusal } from "./internal/finite.ts";
import { elementId, type Visit } from "./internal/parts-in-service.ts";
import { phaseReadings, visitsUpTo } from "./internal/phase-readings.ts";
import { remember } from "./internal/remember.ts";
import { convertTds } from "./internal/tds-scale.ts";
import { restrictorFrom, restrictorRelativeOf } from "./restrictor-from.ts";
import { shutOffRatioOf, shutOffRatioU } from "./shut-off-ratio.ts";

export const FEED_WANDERS_RELATIVE = 0.1;
/** Element known from its own readings, not from its label. */
export const KNOWN_ELEMENT = { waterRelative: 0.03, saltRelative: 0.07, restrictorRelative: 0.02 } as const;

const ports = remember(
  (asked: { readonly unit: Unit; readonly today: Today; readonly scatter: Scatter }) =>
    expectedReadings(asked.unit, asked.today, asked.scatter),
  20,
);

type ReadToday = Readonly<Partial<Record<ExpectedId, Expected>>>;

/** "What should it read today?": two numbers (pressure, temperature) give every port's interval for a sound unit of this make and age. */
export const expectedToday = (file: UnitFile, visit: Visit, context: Context): Outcome<ReadToday> =>
  finiteRefusal(readToday(file, visit, context));

function readToday(file: UnitFile, visit: Visit, context: Context): Outcome<ReadToday> {
  const readings = phaseReadings(visit, "asFound");
  const pressure = amountOf("beforeFilterPressure", readings, file);
  const temperature = amountOf("feedTemperature", readings, file);
  const absent = [pressure, temperature].flatMap((one) => (one.kind === "missing" ? one.missing : []));
  if (absent.length > 0) return missing(...absent);
  if (pressure.kind !== "known" || temperature.kind !== "known") return missing("beforeFilterPressure");
  const sound = soundElement(file, visit);
  if (sound.kind !== "known") return sound;
  const feed = feedToday(file, visit) ?? sound.value.readings.feedMgPerL!;
  return mapOutcome(elementFrom(sound.value.readings, file, temperatureFormOf(file, context)), (element) => {
    const charge = chargeToday(file, visit);
    const tank = tankOf(file, charge.value);
    const unit = physicsUnit(file, context, {
      element,
      restrictor: restrictorFrom(sound.value.readings, file),
      tank: tank.kind === "known" ? tank.value : undefined,
    });
    const standing = standingToday(readings, file, pressure.value);
    const today = {
      feedPressureKPaGauge: pressure.value,
      temperatureC: temperature.value,
      feedMgPerL: feed,
      staticFeedKPaGauge: standing.value,
    };
    const scatter = {
      ...usualScatter,
      restrictorRelative: restrictorRelativeOf(file),
      ...(sound.value.ownReadings && KNOWN_ELEMENT),
      airChargeKPa: charge.u,
      shutOffRatio: Math.hypot(
        shutOffRatioU(file),
        (shutOffRatioOf(file, context) * standing.u) / standing.value,
      ),
    };
    return mapOutcome(ports({ unit, today, scatter }), (read) =>
      known(inTradeUnits(read, file, visit, context)),
    );
  });
}

/** With nothing flowing the feed stands above its flowing pressure: by how much where it was not read, and how sure. Common practice, no source. */
export const STANDING_ABOVE = { relative: 0.06, uRelative: 0.04 } as const;

function standingToday(readings: PhaseReadings, file: UnitFile, flowing: Uncertain): Uncertain {
  const read = amountOf("staticPressure", readings, file);
  if (read.kind === "known") return read.value;
  return {
    value: (1 + STANDING_ABOVE.relative) * flowing.value,
    u: STANDING_ABOVE.uRelative * flowing.value,
  };
}

interface SoundElement {
  readonly readings: StandardReadings;
  readonly ownReadings: boolean;
  /** The visit it was last seen sound at. */
  readonly visit?: string;
}

/** This element as last seen (a sound one ages slowly), else as when new, else its nameplate. */
export function soundElement(file: UnitFile, visit: Visit): Outcome<SoundElement> {
  const reference = elementReference(file, visit, "asFound");
  if (reference.kind !== "known") return reference;
  if (reference.value.from === "nameplate")
    return known({ readings: reference.value.readings, ownReadings: false });
  const element = elementId(file, visit, "asFound");
  for (const earlier of visitsUpTo(file, visit).slice(0, -1).reverse()) {
    for (const phase of ["asLeft", "asFound"] as const) {
      if (elementId(file, earlier, phase) !== element) continue;
      const set = standardReadings(phaseReadings(earlier, phase), file);
      if (set.kind === "known" && set.value.permeateMgPerL!.value > 0)
        return known({ readings: set.value, ownReadings: true, visit: earlier.id });
    }
  }
  return known({ readings: reference.value.readings, ownReadings: true });
}

function feedToday(file: UnitFile, visit: Visit): Uncertain | undefined {
  const now = amountOf("feedTds", phaseReadings(visit, "asFound"), file);
  if (now.kind === "known" && now.value.value > 0) return now.value;
  for (const earlier of visitsUpTo(file, visit).slice(0, -1).reverse()) {
    const then = amountOf("feedTds", earlier.readings.asFound, file);
    if (then.kind === "known" && then.value.value > 0)
      return { value: then.value.value, u: FEED_WANDERS_RELATIVE * then.value.value };
  }
  return undefined;
}

const IDS = {
  afterFilter: "afterFilterPressure",
  drain: "drainFlow",
  permeate: "permeateFlow",
  permeateToWaste: "permeateTds",
  tankFull: "tankFullPressure",
  delivered: "deliveredTds",
} as const satisfies Record<string, ExpectedId>;

function inTradeUnits(
  ports: Readonly<Partial<Record<keyof typeof IDS, Interval>>>,
  file: UnitFile,
  visit: Visit,
  context: Context,
): ReadToday {
  const reading = visit.readings.asFound.feedTds;
  const meters = [...file.instruments.values()].filter((one) => one.kind === "tds");
  const usual = (meters.find((one) => one.usual) ?? meters[0])?.scale ?? "NaCl";
  const scale = usable(reading) ? scaleOf(reading, file) : usual;
  const blended = mixUnknown(file);
  const out: Partial<Record<ExpectedId, Expected>> = {};
  for (const [port, interval] of Object.entries(ports) as [keyof typeof IDS, Interval][]) {
    const id = IDS[port];
    if (id === "deliveredTds" && blended) continue;
    const each = (f: (x: number) => number) => ({
      low: f(interval.low),
      high: f(interval.high),
      value: f(interval.value),
    });
    if (port === "afterFilter" || port === "tankFull") {
      const unit = pressureUnitOf(context);
      out[id] = { ...each((x) => converted(x, "kPa", unit)), unit };
    } else if (port === "drain" || port === "permeate") out[id] = { ...each((x) => x / 60), unit: "L/min" };
    else out[id] = { ...each((x) => convertTds(x, "NaCl", scale)), unit: "ppm", scale };
  }
  return Object.fromEntries(
    Object.entries(out).filter(([, one]) => [one.low, one.high, one.value].every(Number.isFinite)),
  );
}
