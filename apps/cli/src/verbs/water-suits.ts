import { allKnown, known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import {
  type ApplianceMake,
  type BlendAnswer,
  type BlendOptions,
  blendRange,
  type ConstituentId,
  type PropertyId,
  publishedNeeds,
  remineralise,
  speciate,
  steelChlorideLimit,
  suits,
  type Water,
  type WaterAnalysis,
  type WaterLimit,
} from "@tapside/water";
import { all, mapReader, optional, optionalNotNegative, type Reader, text, word } from "./reader.ts";
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

/** Of liquid water as it is solved; blank stays blank. */
const HOTTEST_C = 160;
const possibleC = (temperatureC: number | undefined): Outcome<number | undefined> =>
  temperatureC === undefined || (temperatureC >= 0 && temperatureC <= HOTTEST_C)
    ? known(temperatureC)
    : refused("temperature-out-of-range", { temperatureC, lowC: 0, highC: HOTTEST_C });

/** Steel hotter than its table has no limit: said rather than left out. */
const withinItsTable = (make: ApplianceMake): Outcome<ApplianceMake> =>
  make.steel === undefined
    ? known(make)
    : mapOutcome(steelChlorideLimit(make.steel, make.hottestC), () => known(make));

const makeOfRow = mapReader(
  all({
    name: text("appliance"),
    use: word("use", USES),
    hottestC: mapReader(optional("hottest_C"), possibleC),
    steel: word("steel", ["304", "316", "other"], "other"),
    copper: word("copper", [...YES, ...NO], "no"),
  }),
  ({ name, use, hottestC, steel, copper }) =>
    withinItsTable({
      name,
      use,
      hottestC: hottestC ?? (use === "cold" ? 20 : 100),
      ...(steel !== "other" && { steel }),
      copperOrBrass: YES.some((yes) => yes === copper),
    }),
);

const labelOfRow = all(
  Object.fromEntries(LABELS.map(([property, column]) => [property, optionalNotNegative(column)])) as Record<
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
    feed: optionalNotNegative("feed_chlorine_mg"),
    permeate: optionalNotNegative("perm_chlorine_mg"),
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

/** What a limit needs read of a water: at least one of these. */
const READ_AS: readonly (readonly [PropertyId, readonly ConstituentId[]])[] = [
  ["chloride", ["Cl"]],
  ["silica", ["SiO2"]],
  ["sulfate", ["SO4"]],
  ["sodium", ["Na"]],
  ["hardness", ["Ca", "Mg"]],
  ["calcium", ["Ca"]],
  ["calciumHardness", ["Ca"]],
];

const unreadOf = ({ ions }: WaterAnalysis): ReadonlySet<PropertyId> =>
  new Set(
    READ_AS.filter(([, ids]) => ids.every((id) => ions[id] === undefined)).map(([property]) => property),
  );

/** A water, and the properties of it that nothing tells: a blank ion is none of it in the sums, but no limit is kept by it. */
const waterAndUnread = (prefix: string) =>
  mapReader(analysisIn(prefix), (analysis) =>
    mapOutcome(speciate(analysis), (water) => known({ water, unread: unreadOf(analysis) })),
  );

/** Feed and permeate of a row, at one temperature. */
export const twoWatersOfRow = mapReader(
  all({ feed: waterAndUnread("feed_"), permeate: waterAndUnread("perm_") }),
  ({ feed, permeate }) =>
    known({
      feed: feed.water,
      permeate: permeate.water,
      unread: {
        feed: feed.unread,
        permeate: permeate.unread,
        blend: new Set([...feed.unread, ...permeate.unread]),
      },
    }),
);

/** A limit in one line. */
export const named = (limit: WaterLimit) =>
  `${limit.property} ${limit.low ?? ""}..${limit.high ?? ""} ${limit.unit}`;

function against(
  water: Water,
  limits: readonly WaterLimit[],
  chlorine: number | undefined,
  unread: ReadonlySet<PropertyId>,
): Outcome<string> {
  const dosed = chlorine === undefined ? {} : { totalChlorineMgPerL: chlorine };
  return mapOutcome(suits([water], limits, { ...dosed, unread }), (answers) =>
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
  answer: ({ limits, waters: { feed, permeate, unread }, options }) => {
    const said = allKnown({
      feed_not_within: against(feed, limits, options.totalChlorineMgPerL, unread.feed),
      permeate_not_within: against(permeate, limits, options.permeateChlorineMgPerL, unread.permeate),
      blend: blendRange(feed, permeate, limits, { ...options, unread: unread.blend }),
    });
    return mapOutcome(said, ({ blend, ...words }) => known({ ...words, ...columnsOf(blend) }));
  },
});
