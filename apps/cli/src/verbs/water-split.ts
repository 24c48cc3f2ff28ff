import { allKnown, known, mapOutcome, missing, type Outcome } from "@tapside/quantities";
import {
  CONSTITUENTS,
  MOLAR_MASS,
  type Rejections,
  speciate,
  speciateConserved,
  splitStream,
  type Water,
} from "@tapside/water";
import { all, mapReader, number, optional, type Reader } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { allShown, analysisIn } from "./water-input.ts";

const REJECTED = ["Ca", "Mg", "K", "Cl", "SO4", "NO3", "F", "SiO2"] as const;

type RejectionsRead = Readonly<Record<(typeof REJECTED)[number], number | undefined>> & {
  readonly alkalinity: number;
};

const rejectionsIn: Reader<RejectionsRead> = all({
  ...(Object.fromEntries(REJECTED.map((id) => [id, optional(`rej_${id}`)])) as Record<
    (typeof REJECTED)[number],
    Reader<number | undefined>
  >),
  alkalinity: number("rej_Alk"),
});

/** Rejections of the row; one left blank matters only when the feed holds that constituent. */
function rejectionsFor(feed: Water, read: RejectionsRead): Outcome<Rejections> {
  const absent = REJECTED.filter((id) => read[id] === undefined && feed.totals[id] > 0);
  if (absent.length > 0) return missing(...absent.map((id) => `rej_${id}`));
  const given = Object.fromEntries(REJECTED.map((id) => [id, read[id] ?? 0]));
  return known({ ...given, alkalinity: read.alkalinity } as unknown as Rejections);
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

const streamNames = (prefix: string) =>
  [...CONSTITUENTS, "Alk", "CT_mol", "pH", "SI_calcite"].map((name) => `${prefix}_${name}`);

/** Permeate and concentrate of one feed a row, by given rejections and recovery. */
export const waterSplitVerb = rowVerb({
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
  reads: all({
    feed: mapReader(analysisIn(), speciate),
    recovery: number("recovery"),
    rejections: rejectionsIn,
  }),
  answer: ({ feed, recovery, rejections }) => {
    const streams = mapOutcome(rejectionsFor(feed, rejections), (given) =>
      splitStream(feed, given, recovery),
    );
    return mapOutcome(streams, ({ permeate, concentrate }) =>
      mapOutcome(
        allKnown({ permeate: speciateConserved(permeate), concentrate: speciateConserved(concentrate) }),
        (solved) => known(allShown(splitColumns(feed, solved.permeate, solved.concentrate))),
      ),
    );
  },
});
