import { known, type Outcome, type Refused, refused, type Uncertain } from "@tapside/quantities";
import type { Element } from "./element.ts";
import { matchedElement } from "./internal/matched-element.ts";
import { propagate } from "./internal/propagate.ts";
import { restrictorLPerH } from "./restrictor.ts";
import type { TemperatureFormId } from "./temperature-correction.ts";

/** Readings of one visit, at the element, permeate at a known back-pressure. */
export interface FitReadings {
  readonly elementPressureKPaGauge: Uncertain;
  readonly permeatePressureKPaGauge: number;
  readonly temperatureC: Uncertain;
  readonly feedMgPerL: Uncertain;
  readonly permeateLPerH: Uncertain;
  readonly permeateMgPerL: Uncertain;
  readonly drainLPerH: Uncertain;
  /** 1 gives A·S and B·S. */
  readonly areaM2: number;
  readonly polarisation: number;
  readonly temperatureForm: TemperatureFormId;
  /** Pressure at which the restrictor's flow is to be stated. */
  readonly restrictorRatedKPa: number;
  /** Before the first cartridge, flowing: gives the drop of the filters. */
  readonly feedPressureKPaGauge?: Uncertain;
}

export interface UnitFit {
  readonly waterLPerM2HBar: Uncertain;
  readonly saltLPerM2H: Uncertain;
  readonly restrictorRatedLPerH: Uncertain;
  readonly filterDropKPa?: Uncertain;
}

const names = [
  "elementPressureKPaGauge",
  "temperatureC",
  "feedMgPerL",
  "permeateLPerH",
  "permeateMgPerL",
  "drainLPerH",
] as const;

type Values = Readonly<Record<(typeof names)[number], number>>;

/** A and B of one set of readings; undefined where no element does that. */
function elementOf(readings: FitReadings, x: Values): Element | undefined {
  const { areaM2, polarisation, temperatureForm } = readings;
  const driveKPa = x.elementPressureKPaGauge - readings.permeatePressureKPaGauge;
  const flux = x.permeateLPerH / areaM2;
  const passage = x.permeateMgPerL / x.feedMgPerL;
  const [waterLPerM2HBar, saltLPerM2H] = [(100 * flux) / driveKPa, (flux * passage) / (1 - passage)];
  if (!(waterLPerM2HBar > 0 && saltLPerM2H > 0)) return undefined;
  return matchedElement(
    { areaM2, waterLPerM2HBar, saltLPerM2H, polarisation, temperatureForm },
    { ...x, feedLPerH: x.permeateLPerH + x.drainLPerH, driveKPa },
  );
}

function refusal(x: Values): Refused | undefined {
  if (!(x.permeateMgPerL > 0 && x.permeateMgPerL < x.feedMgPerL))
    return refused("permeate-not-below-feed", { permeateMgPerL: x.permeateMgPerL });
  if (!(x.temperatureC >= 0 && x.temperatureC <= 45))
    return refused("temperature-out-of-range", { temperatureC: x.temperatureC });
  if (!(x.drainLPerH > 0.05 * x.permeateLPerH))
    return refused("nameplate-recovery", { drainLPerH: x.drainLPerH });
  return undefined;
}

/**
 * A, B, restrictor and filter drop from one visit's readings: a reading set is a label at its own conditions.
 *
 * Formula: as many unknowns as readings; A and B from flow and permeate solids through the stepped element, restrictor from
 * drain flow and pressure; standard uncertainties to first order
 * Source: model of `operatingPoint`; JCGM 100 clause 5.
 * Range: 0 to 45 °C, permeate below feed, recovery below 0.95.
 * Error: a leak past the seals reads as B, a fouled spacer as A.
 * @example
 * ```ts
 * import { fitUnit } from "@tapside/reverse-osmosis";
 * const exact = (value: number) => ({ value, u: 0 });
 * const fit = fitUnit({
 *   elementPressureKPaGauge: exact(433), permeatePressureKPaGauge: 128, temperatureC: exact(19.7), feedMgPerL: exact(1674),
 *   permeateLPerH: exact(8.9234), permeateMgPerL: exact(128.37), drainLPerH: exact(76.395), areaM2: 1.28, polarisation: 1,
 *   temperatureForm: "1.03^(T-25)", restrictorRatedKPa: 414,
 * });
 * fit.kind === "known" ? fit.value.waterLPerM2HBar.value : 0; // => 4.64
 * ```
 */
export function fitUnit(readings: FitReadings): Outcome<UnitFit> {
  const inputs = Object.fromEntries(names.map((name) => [name, readings[name]])) as Readonly<
    Record<(typeof names)[number], Uncertain>
  >;
  const centre = Object.fromEntries(names.map((name) => [name, readings[name].value])) as Values;
  const no = refusal(centre);
  if (no) return no;
  if (!elementOf(readings, centre)) return refused("nameplate-contradictory");
  const of = (key: "waterLPerM2HBar" | "saltLPerM2H") =>
    propagate((x) => elementOf(readings, x)?.[key] ?? Number.NaN, inputs);
  const [waterLPerM2HBar, saltLPerM2H] = [of("waterLPerM2HBar"), of("saltLPerM2H")];
  if (!Number.isFinite(waterLPerM2HBar.u + saltLPerM2H.u)) return refused("readings-too-uncertain");
  return known({
    waterLPerM2HBar,
    saltLPerM2H,
    restrictorRatedLPerH: propagate((x) => {
      const unit = { kind: "rated", ratedLPerH: 1, ratedKPa: readings.restrictorRatedKPa } as const;
      return x.drainLPerH / restrictorLPerH(unit, x.elementPressureKPaGauge, x.temperatureC);
    }, inputs),
    ...(readings.feedPressureKPaGauge && {
      filterDropKPa: propagate((x: { before: number; after: number }) => x.before - x.after, {
        before: readings.feedPressureKPaGauge,
        after: readings.elementPressureKPaGauge,
      }),
    }),
  });
}
