import {
  evenlyBetween,
  type KeepsUp,
  type Kitchen,
  LITRES_RELATIVE,
  leastRemedy,
  leastTankL,
  REMEDY_IDS,
  type RemedyId,
  remedies,
  type Use,
} from "@tapside/kitchen";
import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import { all, mapReader, notNegative, optional, positive, type Reader } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { emptyTankOfRow, unitOfRow } from "./unit-row.ts";

const useOfRow: Reader<Use> = mapReader(
  all({
    litres: positive("litres_day"),
    u: optional("litres_day_u"),
    from: optional("used_from_h"),
    until: optional("used_until_h"),
    drawL: positive("draw_L", 3),
  }),
  ({ litres, u, from, until, drawL }) => {
    const use = { name: "", litresPerDay: { value: litres, u: u ?? LITRES_RELATIVE.told * litres }, drawL };
    if (from === undefined || until === undefined) return known(use);
    return mapOutcome(evenlyBetween(from, until), (hours) => known({ ...use, hours }));
  },
);

const withTail = (name: string) => [`${name}_low`, name, `${name}_high`];
const servesOf = (id: RemedyId) =>
  `${id.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)}_serves_L_day`;

function servesCells(name: string, outcome: Outcome<KeepsUp>): Record<string, number | string> {
  const of = (which: keyof KeepsUp["serves"]) =>
    outcome.kind === "known" ? rounded(outcome.value.serves[which]) : "";
  return { [`${name}_low`]: of("low"), [name]: of("value"), [`${name}_high`]: of("high") };
}

/** As many digits as the chance of days backs. */
const rounded = (value: number): number => Number(value.toPrecision(3));

const cellOf = (outcome: Outcome<number>) => (outcome.kind === "known" ? rounded(outcome.value) : "");

function cellsOf(kitchen: Kitchen, madeRelative: number): Outcome<Record<string, number | string>> {
  const options = { madeRelative };
  const tried = remedies(kitchen, options);
  const [asItIs] = tried;
  if (!asItIs) return refused("no-use");
  return mapOutcome(asItIs.answer, (now) =>
    known({
      says: now.verdict,
      days_short_percent: rounded(100 * now.daysShort),
      lowest_hour: now.tightestHour,
      drain_L_day: rounded(now.drainLPerDay),
      hours_running: rounded(now.hoursRunning),
      ...Object.assign({}, ...tried.map(({ id, answer }) => servesCells(servesOf(id), answer))),
      least_remedy: leastRemedy(tried)?.id ?? "",
      least_tank_L: cellOf(leastTankL(kitchen, options)),
    }),
  );
}

/** `tapside kitchen day`: a unit and what its kitchen takes a row → what it serves, whether that is enough, what would help. */
export const kitchenDayVerb = rowVerb({
  summary:
    "a unit and its kitchen's busy day a row: what it serves, whether that is enough, the least that helps, the smallest tank",
  columns: [
    "says",
    "days_short_percent",
    "lowest_hour",
    "drain_L_day",
    "hours_running",
    ...REMEDY_IDS.flatMap((id) => withTail(servesOf(id))),
    "least_remedy",
    "least_tank_L",
  ],
  reads: all({
    unit: unitOfRow,
    conditions: emptyTankOfRow,
    minimumKPaGauge: notNegative("minimum_kPa_gauge", 0),
    use: useOfRow,
    madeRelative: positive("made_relative_u", 0.07),
  }),
  answer: ({ unit, conditions, minimumKPaGauge, use, madeRelative }) =>
    cellsOf({ unit, situation: { conditions, minimumKPaGauge }, uses: [use] }, madeRelative),
});
