import { allKnown, known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import {
  type ApplianceMake,
  type BlendAnswer,
  type BlendOptions,
  blendRange,
  publishedNeeds,
  remineralise,
  speciate,
  suits,
  type Water,
  type WaterLimit,
} from "@tapside/water";
import type { RowVerb } from "./row-verb.ts";
import { analysisOf, type Cells, cell } from "./water-input.ts";

const LABELS = [
  ["hardness", "limit_hardness_CaCO3_mg", "mg/L CaCO3"],
  ["alkalinity", "limit_Alk_CaCO3_mg", "mg/L CaCO3"],
  ["chloride", "limit_Cl_mg", "mg/L"],
  ["silica", "limit_SiO2_mg", "mg/L"],
  ["tds442", "limit_TDS_442_ppm", "ppm 442"],
  ["totalChlorine", "limit_chlorine_mg", "mg/L"],
] as const;

const USES = ["coffee", "steam", "hot", "cold"] as const;

/** Limits of the appliance of a row: what it is and what its label asks. */
export function limitsOf(input: Cells): Outcome<readonly WaterLimit[]> {
  const use = USES.find((one) => one === (input.use ?? "").trim());
  if (!use) return refused("appliance-use-unknown", { use: input.use ?? "" });
  const steel = (input.steel ?? "").trim();
  const make: ApplianceMake = {
    name: input.appliance ?? "",
    use,
    hottestC: cell(input, "hottest_C") ?? (use === "cold" ? 20 : 100),
    ...((steel === "304" || steel === "316") && { steel }),
    copperOrBrass: /^(yes|1|true)$/i.test((input.copper ?? "").trim()),
  };
  const label = LABELS.flatMap(([property, column, unit]) => {
    const high = cell(input, column);
    return high === undefined ? [] : [{ property, high, unit, source: "label", appliance: make.name }];
  });
  return known([...label, ...publishedNeeds(make)]);
}

/** Chlorine read, and a contactor after the blend when its approach is given. */
export function blendOptions(input: Cells): BlendOptions {
  const feed = cell(input, "feed_chlorine_mg");
  const permeate = cell(input, "perm_chlorine_mg");
  const approach = cell(input, "remineraliser_approach");
  return {
    ...(feed !== undefined && { totalChlorineMgPerL: feed }),
    ...(permeate !== undefined && { permeateChlorineMgPerL: permeate }),
    ...(approach !== undefined && {
      after: (water) => mapOutcome(remineralise(water, approach), (done) => known(done.water)),
    }),
  };
}

/** A limit in one line. */
export const named = (limit: WaterLimit) =>
  `${limit.property} ${limit.low ?? ""}..${limit.high ?? ""} ${limit.unit}`;

function against(water: Water, limits: readonly WaterLimit[], chlorine: number | undefined): Outcome<string> {
  const dosed = chlorine === undefined ? {} : { totalChlorineMgPerL: chlorine };
  return mapOutcome(suits([water], limits, dosed), (answers) =>
    known(
      answers
        .filter(({ answer }) => answer !== "within")
        .map(({ limit, answer }) => `${answer}: ${named(limit)}`)
        .join("; "),
    ),
  );
}

/** The blends that keep all, or why none does. */
export const columnsOf = (answer: BlendAnswer) => ({
  blend_low: answer.kind === "range" ? answer.lowFeedFraction : "",
  blend_high: answer.kind === "range" ? answer.highFeedFraction : "",
  why_none:
    answer.kind === "none"
      ? [
          ...answer.broken.map(named),
          ...answer.conflicts.map((pair) => pair.map(named).join(" against ")),
        ].join("; ")
      : "",
});

function suitsRow(input: Cells) {
  const given = allKnown({
    limits: limitsOf(input),
    feed: mapOutcome(analysisOf(input, "feed_"), speciate),
    permeate: mapOutcome(analysisOf(input, "perm_"), speciate),
  });
  return mapOutcome(given, ({ limits, feed, permeate }) => {
    const options = blendOptions(input);
    const said = allKnown({
      feed_not_within: against(feed, limits, options.totalChlorineMgPerL),
      permeate_not_within: against(permeate, limits, options.permeateChlorineMgPerL),
      blend: blendRange(feed, permeate, limits, options),
    });
    return mapOutcome(said, ({ blend, ...words }) => known({ ...words, ...columnsOf(blend) }));
  });
}

/** Feed, permeate and every blend of the two against an appliance's label and the published needs. */
export const waterSuitsVerb: RowVerb = {
  summary: "feed, permeate and their blends, one appliance a row, against its label and the published needs",
  columns: ["feed_not_within", "permeate_not_within", "blend_low", "blend_high", "why_none"],
  row: suitsRow,
};
