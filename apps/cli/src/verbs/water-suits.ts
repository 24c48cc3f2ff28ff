import { allKnown, known, mapOutcome, type Outcome } from "@tapside/quantities";
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
import { all, mapReader, optional, type Reader, text, word } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { analysisIn } from "./water-input.ts";

const LABELS = [
  ["hardness", "limit_hardness_CaCO3_mg", "mg/L CaCO3"],
  ["alkalinity", "limit_Alk_CaCO3_mg", "mg/L CaCO3"],
  ["chloride", "limit_Cl_mg", "mg/L"],
  ["silica", "limit_SiO2_mg", "mg/L"],
  ["tds442", "limit_TDS_442_ppm", "ppm 442"],
  ["totalChlorine", "limit_chlorine_mg", "mg/L"],
] as const;

const USES = ["coffee", "steam", "hot", "cold"] as const;

const YES = ["yes", "1", "true"] as const;
const NO = ["no", "0", "false"] as const;

const makeOfRow = mapReader(
  all({
    name: text("appliance"),
    use: word("use", USES),
    hottestC: optional("hottest_C"),
    steel: word("steel", ["304", "316", "other"], "other"),
    copper: word("copper", [...YES, ...NO], "no"),
  }),
  ({ name, use, hottestC, steel, copper }) =>
    known<ApplianceMake>({
      name,
      use,
      hottestC: hottestC ?? (use === "cold" ? 20 : 100),
      ...(steel !== "other" && { steel }),
      copperOrBrass: YES.some((yes) => yes === copper),
    }),
);

const labelOfRow = all(
  Object.fromEntries(LABELS.map(([property, column]) => [property, optional(column)])) as Record<
    (typeof LABELS)[number][0],
    Reader<number | undefined>
  >,
);

/** Limits of the appliance of a row: what it is and what its label asks. */
export const limitsOfRow: Reader<readonly WaterLimit[]> = mapReader(
  all({ make: makeOfRow, label: labelOfRow }),
  ({ make, label }) =>
    known([
      ...LABELS.flatMap(([property, , unit]) => {
        const high = label[property];
        return high === undefined ? [] : [{ property, high, unit, source: "label", appliance: make.name }];
      }),
      ...publishedNeeds(make),
    ]),
);

/** Chlorine read, and a contactor after the blend when its approach is given. */
export const blendOptionsOfRow = mapReader(
  all({
    feed: optional("feed_chlorine_mg"),
    permeate: optional("perm_chlorine_mg"),
    approach: optional("remineraliser_approach"),
  }),
  ({ feed, permeate, approach }) =>
    known<BlendOptions>({
      ...(feed !== undefined && { totalChlorineMgPerL: feed }),
      ...(permeate !== undefined && { permeateChlorineMgPerL: permeate }),
      ...(approach !== undefined && {
        after: (water) => mapOutcome(remineralise(water, approach), (done) => known(done.water)),
      }),
    }),
);

/** Feed and permeate of a row, at one temperature. */
export const twoWatersOfRow = all({
  feed: mapReader(analysisIn("feed_"), speciate),
  permeate: mapReader(analysisIn("perm_"), speciate),
});

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

/** Feed, permeate and every blend of the two against an appliance's label and the published needs. */
export const waterSuitsVerb = rowVerb({
  summary: "feed, permeate and their blends, one appliance a row, against its label and the published needs",
  columns: ["feed_not_within", "permeate_not_within", "blend_low", "blend_high", "why_none"],
  reads: all({ limits: limitsOfRow, waters: twoWatersOfRow, options: blendOptionsOfRow }),
  answer: ({ limits, waters: { feed, permeate }, options }) => {
    const said = allKnown({
      feed_not_within: against(feed, limits, options.totalChlorineMgPerL),
      permeate_not_within: against(permeate, limits, options.permeateChlorineMgPerL),
      blend: blendRange(feed, permeate, limits, options),
    });
    return mapOutcome(said, ({ blend, ...words }) => known({ ...words, ...columnsOf(blend) }));
  },
});
