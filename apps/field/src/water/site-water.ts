import {
  applianceMake,
  feedHistory,
  feedWaterReadings,
  type LeftOpen,
  possibleMakes,
  waterLimitsOf,
} from "@tapside/assessment";
import { type Book, type KeptVisit, type UnitFile, unitFile } from "@tapside/records";
import type { FieldReadings, HistoryPoint } from "@tapside/water";

/** A site's water gathered from its units, visits and analyses. */
export interface SiteWater {
  readonly files: readonly UnitFile[];
  readonly readings: FieldReadings;
  readonly limits: readonly LeftOpen[];
  readonly appliances: readonly { readonly name: string; readonly temperatureC: number }[];
  /** Appliances of which the record does not say what would be needed to tell all. */
  readonly unsaid: readonly {
    readonly id: string;
    readonly name: string;
    readonly blank: readonly string[];
  }[];
  /** Share of the feed's dissolved solids found in the product, when both were read. */
  readonly passage?: number;
  /** Chlorine after carbon, mg/L; 0 where the test showed nothing. */
  readonly chlorineMgPerL?: number;
  readonly remineraliser: boolean;
  /** Feed conductivity at each visit that read it. */
  readonly history: readonly HistoryPoint[];
}

const read = (visit: KeptVisit, slot: "feedTds" | "permeateTds" | "chlorineAfter") => {
  const reading = visit.readings.asFound[slot];
  return reading && !reading.doubtful && typeof reading.value === "number" ? reading : undefined;
};

const noVisit = { readings: { asFound: {}, asLeft: {} } } as const;

export function siteWater(book: Book, site: string): SiteWater {
  const files = [...book.unit.values()]
    .map((unit) => unitFile(book, unit.id))
    .filter((file): file is UnitFile => file !== undefined && file.site.id === site);
  const visits = files
    .flatMap((file) => file.visits.map((visit) => ({ file, visit })))
    .filter(({ visit }) => read(visit, "feedTds"))
    .sort((a, b) => ((a.visit.startedAt ?? "") < (b.visit.startedAt ?? "") ? -1 : 1));
  const newest = visits.at(-1);
  const analyses = [...book.waterAnalysis.values()]
    .filter((one) => one.site === site)
    .sort((a, b) => ((a.sampledOn ?? "") < (b.sampledOn ?? "") ? -1 : 1));
  const scope = { instruments: book.instrument, analyses };
  const appliances = files.flatMap((file) => file.appliances);
  return {
    files,
    readings: feedWaterReadings(newest?.visit ?? noVisit, scope),
    limits: appliances.flatMap(waterLimitsOf),
    appliances: appliances.map((one) => {
      const { name, hottestC } = applianceMake(one);
      return { name, temperatureC: hottestC };
    }),
    unsaid: appliances
      .map((one) => ({ id: one.id, name: one.name ?? "", blank: possibleMakes(one).blank }))
      .filter(({ blank }) => blank.length > 0),
    ...(newest && fromVisit(newest.visit)),
    remineraliser: files.some((file) => file.unit.remineraliser === true),
    history: feedHistory(
      visits.map(({ visit }) => visit),
      { instruments: book.instrument },
    ),
  };
}

function fromVisit(visit: KeptVisit): Pick<SiteWater, "passage" | "chlorineMgPerL"> {
  const [feed, product, chlorine] = [
    read(visit, "feedTds"),
    read(visit, "permeateTds"),
    read(visit, "chlorineAfter"),
  ];
  return {
    ...(feed?.value && product && { passage: product.value! / feed.value }),
    ...(chlorine && { chlorineMgPerL: chlorine.notDetected ? 0 : chlorine.value! }),
  };
}
