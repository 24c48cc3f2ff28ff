import { known, mapOutcome, type Outcome, refused, type Uncertain } from "@tapside/quantities";
import { elementFromNameplate } from "./element-from-nameplate.ts";
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

const elementOf = (readings: FitReadings, x: Values) =>
  elementFromNameplate({
    permeateLPerH: x.permeateLPerH,
    rejectLPerH: x.drainLPerH,
    rejection: 1 - x.permeateMgPerL / x.feedMgPerL,
    pressureKPaGauge: x.elementPressureKPaGauge - readings.permeatePressureKPaGauge,
    temperatureC: x.temperatureC,
    feedMgPerL: x.feedMgPerL,
    areaM2: readings.areaM2,
    polarisation: readings.polarisation,
    temperatureForm: readings.temperatureForm,
  });

/**
 * A, B, restrictor and filter drop from one visit's readings: a reading set is a label at its own conditions.
 *
 * Formula: as many unknowns as readings; A and B from flow and permeate solids through the stepped element, restrictor from
 * drain flow and pressure; standard uncertainties to first order
 * Source: model of `operatingPoint`; JCGM 100 clause 5.
 * Range: as `elementFromNameplate`.
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
  if (!(centre.permeateMgPerL > 0 && centre.permeateMgPerL < centre.feedMgPerL))
    return refused("permeate-not-below-feed", { permeateMgPerL: centre.permeateMgPerL });
  return mapOutcome(elementOf(readings, centre), () => {
    const of = (key: "waterLPerM2HBar" | "saltLPerM2H") =>
      propagate((x) => {
        const element = elementOf(readings, x);
        return element.kind === "known" ? element.value[key] : Number.NaN;
      }, inputs);
    return known({
      waterLPerM2HBar: of("waterLPerM2HBar"),
      saltLPerM2H: of("saltLPerM2H"),
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
  });
}
