import { carbonDays, carbonLitres, sanitiserDoseMl, scaldTime, steamAtMostKgPerH } from "@tapside/procedures";
import { known, mapOutcome } from "@tapside/quantities";
import { all, number } from "./reader.ts";
import { type RowVerb, rowVerb } from "./row-verb.ts";

const shown = (value: number) => Number(value.toPrecision(6));

const doseVerb = rowVerb({
  summary: "one tank a row: millilitres of sanitiser for a wanted chlorine, from strength and volume",
  columns: ["dose_mL"],
  reads: all({
    targetMgPerL: number("target_mg_L"),
    litres: number("litres"),
    strengthGPerL: number("strength_g_L"),
  }),
  answer: (request) => mapOutcome(sanitiserDoseMl(request), (ml) => known({ dose_mL: shown(ml) })),
});

const steamVerb = rowVerb({
  summary: "one steam generator a row: the most it can evaporate",
  columns: ["steam_kg_h"],
  reads: all({ kW: number("heater_kW"), feedC: number("feed_C") }),
  answer: ({ kW, feedC }) =>
    mapOutcome(steamAtMostKgPerH(kW, feedC), (kg) => known({ steam_kg_h: shown(kg) })),
});

const carbonVerb = rowVerb({
  summary: "one carbon cartridge a row: litres and days at the chlorine it meets, all of the feed counted",
  columns: ["carbon_L", "carbon_days"],
  reads: all({
    use: all({
      ratedLitres: number("rated_litres"),
      ratedChlorineMgPerL: number("rated_chlorine_mg_L"),
      chlorineMgPerL: number("chlorine_mg_L"),
    }),
    permeateLPerDay: number("permeate_L_d"),
    recovery: number("recovery"),
  }),
  answer: ({ use, permeateLPerDay, recovery }) =>
    mapOutcome(carbonLitres(use), (litres) =>
      mapOutcome(carbonDays(litres, permeateLPerDay, recovery), (days) =>
        known({ carbon_L: shown(litres), carbon_days: shown(days) }),
      ),
    ),
});

const scaldVerb = rowVerb({
  summary: "one temperature a row: how long hot water takes to burn skin",
  columns: ["burns_in_relation", "burns_in_s"],
  reads: number("water_C"),
  answer: (celsius) =>
    mapOutcome(scaldTime(celsius), ({ seconds, relation }) =>
      known({ burns_in_relation: relation, burns_in_s: seconds }),
    ),
});

/** `tapside dose`, `steam`, `carbon`, `scald`: the arithmetic that stands at the steps of the procedures. */
export const procedureVerbs: Readonly<Record<string, RowVerb>> = {
  dose: doseVerb,
  steam: steamVerb,
  carbon: carbonVerb,
  scald: scaldVerb,
};
