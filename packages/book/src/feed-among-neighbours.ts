import { feedHistory } from "@tapside/assessment";
import { known, missing, type Outcome, quantile } from "@tapside/quantities";
import { type Book, type KeptVisit, type UnitFile, unitFile } from "@tapside/records";
import { daysBetween } from "./days.ts";

/** What a unit's feed read, and on which day, in µS/cm at 25 °C whatever scale its meter had. */
export interface FeedRead {
  readonly unit: string;
  readonly site: string;
  readonly name: string;
  readonly on: string;
  readonly ecUSPerCm: number;
}

/**
 * The last feed reading beside those of other units on the same water.
 * "same": it reads what they read. "waterMoved": it reads what they read, and both read otherwise than this unit did before: the water.
 * "thisOne": they agree with each other and not with it: this meter, or this tap. "cannotTell": one neighbour only, who reads otherwise.
 */
export interface AmongNeighbours {
  readonly said: "same" | "waterMoved" | "thisOne" | "cannotTell";
  readonly own: FeedRead;
  readonly others: readonly FeedRead[];
}

/** Water of a town keeps its conductivity for about this long, save for a change of source: common practice, no source. */
const NEAR_DAYS = 14;
/** Standard uncertainty of a pocket meter and of one water over some days, relative: common practice, no source. */
const U = 0.04;
/** Two readings differ when they are further apart than the expanded uncertainty (k = 2) of their difference. */
const FURTHEST = 2 * Math.SQRT2 * U;

const differ = (a: number, b: number): boolean => Math.abs(a - b) > (FURTHEST * (a + b)) / 2;

/** Is it the water or the meter? Asks the neighbours: units of the same site, or of sites named with the same source of water. */
export function feedAmongNeighbours(book: Book, unitId: string): Outcome<AmongNeighbours> {
  const file = unitFile(book, unitId);
  return file ? amongReads(readsOf(file), neighbourFeeds(book, file)) : missing("feedTds");
}

/** The same for the record of a visit; undefined where that visit did not read the feed, is not the newest, or has no neighbours. */
export function neighboursOfVisit(book: Book, file: UnitFile, visitId: string): AmongNeighbours | undefined {
  const newest = file.visits.at(-1);
  if (newest?.id !== visitId || !newest.readings.asFound.feedTds) return undefined;
  const among = feedAmongNeighbours(book, file.unit.id);
  return among.kind === "known" ? among.value : undefined;
}

/** A feed reading as it is being typed, asked of the same neighbours: found once, not at every key. */
export const typedAmongNeighbours = (
  file: UnitFile,
  typed: KeptVisit,
  neighbours: readonly (readonly FeedRead[])[],
): Outcome<AmongNeighbours> =>
  amongReads(
    readsOf({ ...file, visits: [...file.visits.filter(({ id }) => id !== typed.id), typed] }),
    neighbours,
  );

/** What the feeds of all units on the same water read, oldest first, a list for each unit. */
export const neighbourFeeds = (book: Book, file: UnitFile): readonly (readonly FeedRead[])[] =>
  neighboursOf(book, file).map(readsOf);

function amongReads(
  read: readonly FeedRead[],
  neighbours: readonly (readonly FeedRead[])[],
): Outcome<AmongNeighbours> {
  const own = read.at(-1);
  if (!own) return missing("feedTds");
  const others = neighbours.flatMap((one) => newestNear(one, own.on));
  if (others.length === 0) return missing("neighbours");
  return known({ said: sayOf(own, read.at(-2), others), own, others });
}

function sayOf(own: FeedRead, before: FeedRead | undefined, others: readonly FeedRead[]) {
  const values = others.map((one) => one.ecUSPerCm).sort((a, b) => a - b);
  const middle = quantile(values, 0.5);
  if (!differ(own.ecUSPerCm, middle))
    return before && differ(before.ecUSPerCm, own.ecUSPerCm) ? "waterMoved" : "same";
  return values.length > 1 && !differ(values[0]!, values.at(-1)!) ? "thisOne" : "cannotTell";
}

const plain = (text: string | undefined): string => (text ?? "").trim().toLowerCase();

function neighboursOf(book: Book, { site, unit }: UnitFile): readonly UnitFile[] {
  return [...book.unit.keys()].flatMap((id) => {
    const there = book.site.get(book.point.get(book.unit.get(id)?.point ?? "")?.site ?? "");
    if (!there || id === unit.id) return [];
    const sameWater = plain(there.waterSource) !== "" && plain(there.waterSource) === plain(site.waterSource);
    return there.id === site.id || sameWater ? (unitFile(book, id) ?? []) : [];
  });
}

export const readsOf = (file: UnitFile): readonly FeedRead[] =>
  feedHistory(file.visits, file).map(({ at, value }) => ({
    unit: file.unit.id,
    site: file.site.name ?? "",
    name: file.unit.name ?? "",
    on: at.slice(0, 10),
    ecUSPerCm: value,
  }));

export const newestNear = (reads: readonly FeedRead[], on: string): readonly FeedRead[] =>
  reads.filter((one) => Math.abs(daysBetween(one.on, on)) <= NEAR_DAYS).slice(-1);
