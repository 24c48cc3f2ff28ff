import { carbonDays, carbonLitres, sanitiserDoseMl, scaldTime, steamAtMostKgPerH } from "@tapside/procedures";
import { allKnown, known, mapOutcome, missing, type Outcome, parseReading } from "@tapside/quantities";
import type { RowVerb } from "./row-verb.ts";

type Row = Readonly<Record<string, string>>;

const numberIn = (row: Row, column: string): Outcome<number> =>
  row[column]?.trim() ? mapOutcome(parseReading(row[column]), ({ value }) => known(value)) : missing(column);

const shown = (value: number) => Number(value.toPrecision(6));

const doseVerb: RowVerb = {
  summary: "one tank a row: millilitres of sanitiser for a wanted chlorine, from strength and volume",
  columns: ["dose_mL"],
  row: (row) =>
    mapOutcome(
      allKnown({
        targetMgPerL: numberIn(row, "target_mg_L"),
        litres: numberIn(row, "litres"),
        strengthGPerL: numberIn(row, "strength_g_L"),
      }),
      (request) => mapOutcome(sanitiserDoseMl(request), (ml) => known({ dose_mL: shown(ml) })),
    ),
};

const steamVerb: RowVerb = {
  summary: "one steam generator a row: the most it can evaporate",
  columns: ["steam_kg_h"],
  row: (row) =>
    mapOutcome(
      allKnown({ kW: numberIn(row, "heater_kW"), feedC: numberIn(row, "feed_C") }),
      ({ kW, feedC }) => mapOutcome(steamAtMostKgPerH(kW, feedC), (kg) => known({ steam_kg_h: shown(kg) })),
    ),
};

const carbonVerb: RowVerb = {
  summary: "one carbon cartridge a row: litres and days at the chlorine it meets, all of the feed counted",
  columns: ["carbon_L", "carbon_days"],
  row: (row) =>
    mapOutcome(
      allKnown({
        ratedLitres: numberIn(row, "rated_litres"),
        ratedChlorineMgPerL: numberIn(row, "rated_chlorine_mg_L"),
        chlorineMgPerL: numberIn(row, "chlorine_mg_L"),
        permeate: numberIn(row, "permeate_L_d"),
        recovery: numberIn(row, "recovery"),
      }),
      ({ permeate, recovery, ...use }) =>
        mapOutcome(carbonLitres(use), (litres) =>
          mapOutcome(carbonDays(litres, permeate, recovery), (days) =>
            known({ carbon_L: shown(litres), carbon_days: shown(days) }),
          ),
        ),
    ),
};

const scaldVerb: RowVerb = {
  summary: "one temperature a row: how long hot water takes to burn skin",
  columns: ["burns_in_relation", "burns_in_s"],
  row: (row) =>
    mapOutcome(numberIn(row, "water_C"), (celsius) =>
      mapOutcome(scaldTime(celsius), ({ seconds, relation }) =>
        known({ burns_in_relation: relation, burns_in_s: seconds }),
      ),
    ),
};

/** `tapside dose`, `steam`, `carbon`, `scald`: the arithmetic that stands at the steps of the procedures. */
export const procedureVerbs: Readonly<Record<string, RowVerb>> = {
  dose: doseVerb,
  steam: steamVerb,
  carbon: carbonVerb,
  scald: scaldVerb,
};
