import type { Book, Kept, Move } from "@tapside/records";

/** A unit at a point for a while. No point: in the store or gone. */
export interface PointSpan {
  readonly unit: string;
  readonly point: string;
  readonly from: string;
  readonly until?: string;
  readonly why: string;
  /** For a loan: the day it should be back. */
  readonly dueBack?: string;
}

/** Where a unit has been, oldest first: its moves, or where it stands when it was never moved. */
export function unitHistory(book: Book, unit: string): readonly PointSpan[] {
  const moves = [...book.move.values()].filter((move) => move.unit === unit && move.on).sort(byDay);
  const first = moves[0];
  const kept = book.unit.get(unit);
  const start: readonly PointSpan[] =
    first && first.from === undefined
      ? []
      : [
          {
            unit,
            point: first?.from ?? kept?.point ?? "",
            from: kept?.fittedOn ?? "",
            ...(first?.on && { until: first.on }),
            why: "fitted",
          },
        ];
  return [...start, ...moves.map((move, i) => spanOf(unit, move, moves[i + 1]))];
}

const spanOf = (unit: string, move: Kept<Move>, next: Kept<Move> | undefined): PointSpan => ({
  unit,
  point: move.to ?? "",
  from: move.on ?? "",
  ...(next?.on && { until: next.on }),
  why: move.why ?? "moved",
  ...(move.until && { dueBack: move.until }),
});

/** Which units hung at a point, oldest first: history follows the point as well as the serial number. */
export function pointHistory(book: Book, point: string): readonly PointSpan[] {
  return [...book.unit.keys()]
    .flatMap((unit) => unitHistory(book, unit).filter((span) => span.point === point))
    .sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : a.unit < b.unit ? -1 : 1));
}

const byDay = (a: Kept<Move>, b: Kept<Move>): number =>
  a.on! < b.on! ? -1 : a.on! > b.on! ? 1 : a.id < b.id ? -1 : 1;
