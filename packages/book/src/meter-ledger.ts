import { quantile } from "@tapside/quantities";
import { type Book, type UnitFile, unitFile } from "@tapside/records";
import { neighbourFeeds, newestNear, readsOf } from "./feed-among-neighbours.ts";
import { offBy } from "./meter-check.ts";

/** One line of a meter's ledger: held against a standard, or its reading beside what other meters read of the same water. */
export type LedgerLine =
  | {
      readonly kind: "check";
      readonly on: string;
      readonly standard: number;
      readonly unit: string;
      readonly offPercent: number;
    }
  | {
      readonly kind: "beside";
      readonly on: string;
      readonly unitId: string;
      readonly title: string;
      /** How far off the middle of the others it read. */
      readonly offPercent: number;
      /** Units whose other meters it is held against. */
      readonly others: number;
    };

/** Expanded uncertainty (k = 2) of how far off one line says a meter is, percent: of two pocket meters, or of one in a standard. */
export const ledgerU = (line: LedgerLine): number =>
  2 * U_PERCENT * (line.kind === "beside" ? Math.sqrt(1 + 1 / line.others) : 1);

/**
 * Every check of a meter and its disagreements with colleagues' meters, oldest first. `said`: "agrees", or it reads "high" or "low"
 * against the others by more than chance would have it; "cannotTell" with fewer than three comparisons.
 */
export interface MeterLedger {
  readonly lines: readonly LedgerLine[];
  readonly said: "agrees" | "high" | "low" | "cannotTell";
  /** Middle difference from the others and its expanded uncertainty (k = 2), percent; absent where there is none. */
  readonly off?: { readonly percent: number; readonly U: number };
}

/** Standard uncertainty of a pocket meter and of one water over some days, percent: common practice, no source. */
const U_PERCENT = 4;
const FEWEST = 3;
const middleOf = (values: readonly number[]) => quantile(values, 0.5);
/** Median absolute deviation to standard deviation, and standard error of a median to that of a mean, of a normal sample (textbook, from memory). */
const MAD_TO_SIGMA = 1.4826;
const MEDIAN_ERROR = 1.2533;

/**
 * The middle of the differences in percent is told from zero at k = 2, by what was assumed of one comparison or by the scatter seen,
 * whichever is wider: a kitchen whose water is not the same after all does not speak against the meter.
 */
export function meterLedger(book: Book, instrument: string): MeterLedger {
  const beside = [...book.unit.keys()].flatMap((id) => besideOthers(book, id, instrument));
  const checks = [...book.meterCheck.values()]
    .filter((check) => check.instrument === instrument && check.standard !== 0)
    .map(
      (check): LedgerLine => ({
        kind: "check",
        on: (check.at ?? "").slice(0, 10),
        standard: check.standard ?? 0,
        unit: check.unit ?? "",
        offPercent: offBy(check),
      }),
    );
  const lines = [...checks, ...beside].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  return { lines, ...meanOf(beside) };
}

type Beside = Extract<LedgerLine, { kind: "beside" }>;

function meanOf(beside: readonly Beside[]): Pick<MeterLedger, "said" | "off"> {
  if (beside.length === 0) return { said: "cannotTell" };
  const percent = middleOf(beside.map((one) => one.offPercent));
  const seen = MAD_TO_SIGMA * middleOf(beside.map((one) => Math.abs(one.offPercent - percent)));
  const assumed = middleOf(beside.map(ledgerU)) / 2;
  const U = (2 * MEDIAN_ERROR * Math.max(seen, assumed)) / Math.sqrt(beside.length);
  const off = { percent, U };
  if (beside.length < FEWEST) return { said: "cannotTell", off };
  return { said: Math.abs(percent) <= U ? "agrees" : percent > 0 ? "high" : "low", off };
}

/** The visits of one unit at which this meter read the feed, each beside neighbours read with other meters. */
function besideOthers(book: Book, unitId: string, instrument: string): readonly Beside[] {
  const file = unitFile(book, unitId);
  const mine = file ? withMeter(file, (one) => one === instrument) : undefined;
  if (!file || !mine || mine.visits.length === 0) return [];
  const neighbours = neighbourFeeds(without(book, instrument), file);
  return readsOf(mine).flatMap((own): readonly Beside[] => {
    const others = neighbours.flatMap((one) => newestNear(one, own.on));
    if (others.length === 0) return [];
    const middle = middleOf(others.map((one) => one.ecUSPerCm));
    const offPercent = (100 * (own.ecUSPerCm - middle)) / middle;
    const title = [own.site, own.name].filter(Boolean).join(", ");
    return [{ kind: "beside", on: own.on, unitId, title, offPercent, others: others.length }];
  });
}

const withMeter = (file: UnitFile, is: (instrument: string) => boolean): UnitFile => ({
  ...file,
  visits: file.visits.filter((visit) => is(visit.readings.asFound.feedTds?.instrument ?? "")),
});

/** The book without the visits whose feed this meter read. */
const without = (book: Book, instrument: string): Book => ({
  ...book,
  visit: new Map(
    [...book.visit].filter(([, visit]) => visit.readings.asFound.feedTds?.instrument !== instrument),
  ),
});
