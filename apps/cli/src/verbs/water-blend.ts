import { allKnown, known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import { type BlendAnswer, blendForAll, type LimitOnBlend } from "@tapside/water";
import type { CommandVerb } from "../command-verb.ts";
import { runGroups } from "./group-runner.ts";
import type { Row } from "./reader.ts";
import { blendOptionsOfRow, columnsOf, limitsOfRow, named, twoWatersOfRow } from "./water-suits.ts";

/** All appliances of one site: they get the same blend. */
interface Kitchen {
  readonly site: string;
  readonly rows: readonly Row[];
}

const COLUMNS = ["site", "appliances", "blend_low", "blend_high", "by_limit", "why_none"];

function kitchensOf(rows: readonly Row[]): readonly Kitchen[] {
  const bySite = new Map<string, Row[]>();
  for (const row of rows) {
    const site = (row.site ?? "").trim();
    bySite.set(site, [...(bySite.get(site) ?? []), row]);
  }
  return [...bySite].map(([site, members]) => ({ site, rows: members }));
}

const isWater = (column: string) => column === "T_C" || /^(feed|perm)_/.test(column);

const sameFigure = (a: string, b: string) =>
  a.trim() === b.trim() || Number(a.replace(",", ".")) === Number(b.replace(",", "."));

/** The water of a site as its rows give it together; a blank cell repeats what another row says. */
function waterOf({ site, rows }: Kitchen): Outcome<Row> {
  const water: Record<string, string> = {};
  for (const row of rows)
    for (const [column, text] of Object.entries(row)) {
      if (!isWater(column) || text.trim() === "") continue;
      const before = water[column];
      if (before !== undefined && !sameFigure(before, text))
        return refused("site-has-two-waters", { site, column });
      water[column] = text;
    }
  return known(water);
}

const limitLine = ({ limit, kept }: LimitOnBlend) =>
  `${limit.appliance ?? ""} ${named(limit)}: ${kept ? `${kept[0]}..${kept[1]}` : "never, or not read"}`.trim();

function blendOf(kitchen: Kitchen): Outcome<Record<string, string | number>> {
  const together = allKnown({
    limits: everyOne(kitchen.rows.map(limitsOfRow.read)),
    water: waterOf(kitchen),
  });
  const answer = mapOutcome(together, ({ limits, water }) => {
    const read = allKnown({
      waters: twoWatersOfRow.read(water),
      options: everyOne(kitchen.rows.map((row) => blendOptionsOfRow.read({ ...row, ...water }))),
    });
    return mapOutcome(read, ({ waters: { feed, permeate, unread }, options }) =>
      blendForAll(
        feed,
        permeate,
        limits.map((of, i) => ({ limits: of, options: { ...options[i]!, unread: unread.blend } })),
      ),
    );
  });
  return mapOutcome(answer, (blend) => known(cellsOf(kitchen, blend)));
}

function everyOne<T>(outcomes: readonly Outcome<T>[]): Outcome<readonly T[]> {
  const values: T[] = [];
  for (const one of outcomes) {
    if (one.kind !== "known") return one;
    values.push(one.value);
  }
  return known(values);
}

const cellsOf = ({ site, rows }: Kitchen, blend: BlendAnswer) => ({
  site,
  appliances: rows.map((row) => row.appliance ?? "").join("; "),
  ...columnsOf(blend),
  by_limit: blend.byLimit.map(limitLine).join("; "),
});

/** The blend range that suits every appliance of a site at once, or why none does, limit by limit. */
export const waterBlendVerb: CommandVerb = {
  summary: "the blends of feed and permeate that suit all appliances of a site at once, or why none does",
  ways: ["IN.csv [-o OUT.csv] [--json]"],
  notes: [
    "an appliance a row as for water suits; rows of the same site get the same water, which one of them may give",
    "a blank ion counts as none of it in the sums, but no limit is told by it; chlorine of the feed alone rules out the blends it breaks",
  ],
  examples: [{ args: ["water", "blend", "examples/larkmoor-appliances.csv"], prints: "blend_low" }],
  run: runGroups("water blend", {
    columns: COLUMNS,
    groups: ({ rows }) =>
      kitchensOf(rows).map((kitchen) => ({ name: kitchen.site || "the site", outcome: blendOf(kitchen) })),
  }),
};
