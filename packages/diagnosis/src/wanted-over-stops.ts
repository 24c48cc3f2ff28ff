import type { UnitFile } from "@tapside/records";
import type { CauseId } from "./causes.ts";
import { loadEngine } from "./engine.ts";
import { expectationOf } from "./expectation.ts";
import type { CompanyCounts } from "./frequencies.ts";
import { odds } from "./odds.ts";
import { assumedWith } from "./posterior.ts";
import { type PartId, REPAIRS } from "./repairs.ts";
import { visitCase } from "./visit-case.ts";

/** A part and the chance that at least one of some stops wants it. */
export interface WantedPart {
  readonly part: PartId;
  readonly probability: number;
}

/** The chance of each cause at one stop, and what was fitted there since it was read. */
export interface StopOdds {
  readonly causes: readonly { readonly cause: CauseId; readonly probability: number }[];
  readonly fitted: ReadonlySet<PartId>;
}

/** In every van: not loaded for a day. */
const TOOLS: ReadonlySet<PartId> = new Set(["handPump", "gauge", "tdsStandard"]);

/** Rarer than this nothing is worth its room in a van: common practice, no source. */
const WORTH_LOADING = 0.1;

/**
 * What a day's stops are likely to want: for one stop 1 − Π(1 − p) over the causes whose repair takes the part, then the same over the
 * stops, taken as independent. Likeliest first, those below one in ten left out.
 */
export function wantedOverStops(stops: readonly StopOdds[]): readonly WantedPart[] {
  const spared = new Map<PartId, number>();
  for (const { causes, fitted } of stops)
    for (const { cause, probability } of causes)
      for (const part of REPAIRS[cause]?.parts ?? [])
        if (!fitted.has(part) && !TOOLS.has(part))
          spared.set(part, (spared.get(part) ?? 1) * (1 - probability));
  return [...spared]
    .map(([part, none]) => ({ part, probability: 1 - none }))
    .filter(({ probability }) => probability >= WORTH_LOADING)
    .sort((a, b) => b.probability - a.probability || (a.part < b.part ? -1 : 1));
}

/** The same for units as their last visit read them; a unit never read, or of which nothing can be told, adds nothing. */
export async function partsForStops(
  files: readonly UnitFile[],
  counts: CompanyCounts | undefined,
): Promise<readonly WantedPart[]> {
  const engine = await loadEngine();
  const assumed = assumedWith(counts);
  const stops = files.flatMap((file): readonly StopOdds[] => {
    const visit = file.visits.at(-1);
    const found = visit && visitCase({ file, visit });
    if (!visit || found?.kind !== "known") return [];
    const { causes } = odds(engine, expectationOf(found.value.scene), found.value.readings, assumed);
    return [{ causes, fitted: fittedAt(file, visit.id) }];
  });
  return wantedOverStops(stops);
}

const PART_OF_ROLE: Readonly<Record<string, PartId>> = {
  element: "element",
  sediment: "preFilter",
  carbon: "carbon",
  postCarbon: "postFilter",
  restrictor: "restrictor",
  shutOff: "shutOffValve",
  checkValve: "checkValve",
  tank: "tank",
};

const fittedAt = (file: UnitFile, visit: string): ReadonlySet<PartId> =>
  new Set(
    file.parts.flatMap((part) => (part.fittedVisit === visit ? (PART_OF_ROLE[part.role ?? ""] ?? []) : [])),
  );
