import { allKnown, known, mapOutcome, type Outcome } from "@tapside/quantities";
import {
  CONSTITUENTS,
  MOLAR_MASS,
  type Rejections,
  speciate,
  speciateConserved,
  splitStream,
  type Water,
} from "@tapside/water";
import type { RowVerb } from "./row-verb.ts";
import { allShown, analysisOf, type Cells, cell, numbersOf } from "./water-input.ts";

const REJECTED = ["Ca", "Mg", "K", "Cl", "SO4", "NO3", "F", "SiO2"] as const;

/** Rejections of the row; one left blank matters only when the feed holds that constituent. */
function rejectionsOf(input: Cells): Outcome<Rejections> {
  const needed = REJECTED.filter((id) => (cell(input, `${id}_mg`) ?? 0) !== 0).map((id) => `rej_${id}`);
  return mapOutcome(numbersOf(input, ["rej_Alk", ...needed]), (given) => {
    const rejections = Object.fromEntries(REJECTED.map((id) => [id, given[`rej_${id}`] ?? 0]));
    return known({ ...rejections, alkalinity: given.rej_Alk } as unknown as Rejections);
  });
}

function streamColumns(prefix: string, water: Water): Record<string, number> {
  const columns: Record<string, number> = {};
  for (const id of CONSTITUENTS) columns[`${prefix}_${id}`] = water.totals[id] * MOLAR_MASS[id] * 1000;
  columns[`${prefix}_Alk`] = water.alkalinityEqPerKg * 50050;
  columns[`${prefix}_CT_mol`] = water.carbonMolPerKg;
  columns[`${prefix}_pH`] = water.pH;
  columns[`${prefix}_SI_calcite`] = water.saturation.calcite;
  return columns;
}

function splitColumns(feed: Water, permeate: Water, concentrate: Water): Record<string, number> {
  return {
    feed_CO2aq_mg: feed.molality.CO2 * 44009.5,
    feed_CT_mol: feed.carbonMolPerKg,
    ...streamColumns("perm", permeate),
    ...streamColumns("conc", concentrate),
    conc_SI_gypsum: concentrate.saturation.gypsum,
    conc_SI_SiO2a: concentrate.saturation.amorphousSilica,
    feed_SI_calcite: feed.saturation.calcite,
  };
}

function splitRow(input: Cells) {
  const given = allKnown({
    feed: mapOutcome(analysisOf(input), speciate),
    recovery: numbersOf(input, ["recovery"]),
    rejections: rejectionsOf(input),
  });
  return mapOutcome(given, ({ feed, recovery, rejections }) =>
    mapOutcome(splitStream(feed, rejections, recovery.recovery), (streams) => {
      const solved = allKnown({
        permeate: speciateConserved(streams.permeate),
        concentrate: speciateConserved(streams.concentrate),
      });
      return mapOutcome(solved, ({ permeate, concentrate }) =>
        known(allShown(splitColumns(feed, permeate, concentrate))),
      );
    }),
  );
}

const streamNames = (prefix: string) =>
  [...CONSTITUENTS, "Alk", "CT_mol", "pH", "SI_calcite"].map((name) => `${prefix}_${name}`);

/** Permeate and concentrate of one feed a row, by given rejections and recovery. */
export const waterSplitVerb: RowVerb = {
  summary: "one feed a row split by given rejections and recovery into permeate and concentrate",
  columns: [
    "feed_CO2aq_mg",
    "feed_CT_mol",
    ...streamNames("perm"),
    ...streamNames("conc"),
    "conc_SI_gypsum",
    "conc_SI_SiO2a",
    "feed_SI_calcite",
  ],
  row: splitRow,
};
