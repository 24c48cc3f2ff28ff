import { neighbourFeeds, typedAmongNeighbours } from "@tapside/book";
import type { Phase, Reading, SlotId } from "@tapside/records";
import { useMemo } from "react";
import type { OpenVisit } from "./use-visit.ts";
import { visitWords as words } from "./words.ts";

/** Asks when a feed reading as typed is far from what the neighbours on the same water read: scale, meter or water? Else empty. */
export function useNeighboursAsk(
  open: OpenVisit,
  phase: Phase,
  slot: SlotId,
  typed: Reading | undefined,
): string {
  const { book } = open.live.snapshot();
  const { file, visit } = open;
  const wanted = slot === "feedTds" && phase === "asFound";
  const neighbours = useMemo(() => (wanted ? neighbourFeeds(book, file) : []), [wanted, book, file]);
  if (!wanted || !typed || neighbours.length === 0) return "";
  const readings = { ...visit.readings, asFound: { ...visit.readings.asFound, feedTds: typed } };
  const among = typedAmongNeighbours(file, { ...visit, readings }, neighbours);
  if (among.kind !== "known" || (among.value.said !== "thisOne" && among.value.said !== "cannotTell"))
    return "";
  const all = among.value.others.map((one) => one.ecUSPerCm);
  const [low, high] = [Math.min(...all), Math.max(...all)].map((value) => value.toFixed(0));
  return words.neighboursRead(low === high ? low! : `${low} – ${high}`, among.value.own.ecUSPerCm.toFixed(0));
}
