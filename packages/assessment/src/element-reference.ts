import { known, mapOutcome, type Outcome } from "@tapside/quantities";
import type { Phase, UnitFile } from "@tapside/records";
import type { StandardReadings } from "@tapside/reverse-osmosis";
import { nameplateAsReadings, standardReadings } from "./from-records.ts";
import { elementId, type Visit } from "./internal/parts-in-service.ts";
import { phaseReadings } from "./internal/phase-readings.ts";

/** What "new" means for an element. */
export interface ElementReference {
  readonly readings: StandardReadings;
  readonly from: "commissioning" | "firstVisit" | "nameplate";
  readonly visit?: string;
  readonly phase?: Phase;
  /** A new element settles over days: numbers of its commissioning are provisional. Common practice, no source. */
  readonly provisional: boolean;
}

/**
 * The reference of the element in service at this phase: its commissioning visit, else the first visit with complete readings after it
 * was fitted, else the nameplate. A visit is never its own reference.
 */
export function elementReference(file: UnitFile, visit: Visit, phase: Phase): Outcome<ElementReference> {
  const element = elementId(file, visit, phase);
  const own = baselines(file, visit, element);
  const chosen = own.find((one) => one.from === "commissioning") ?? own[0];
  if (chosen) return known(chosen);
  return mapOutcome(nameplateAsReadings(file), (readings) =>
    known<ElementReference>({ readings, from: "nameplate", provisional: false }),
  );
}

function baselines(file: UnitFile, visit: Visit, element: string): ElementReference[] {
  const found: ElementReference[] = [];
  for (const earlier of file.visits) {
    if (earlier.id === visit.id) break;
    for (const phase of ["asLeft", "asFound"] as const) {
      if (elementId(file, earlier, phase) !== element) continue;
      const readings = standardReadings(phaseReadings(earlier, phase), file);
      if (readings.kind !== "known" || !sound(readings.value)) continue;
      const commissioning = earlier.kind === "commissioning";
      found.push({
        readings: readings.value,
        from: commissioning ? "commissioning" : "firstVisit",
        visit: earlier.id,
        phase,
        provisional: commissioning,
      });
      break;
    }
    if (found.length > 0 && found[0]!.from === "commissioning") break;
  }
  return found;
}

const sound = (set: StandardReadings): boolean =>
  set.permeateMgPerL!.value > 0 &&
  set.permeateMgPerL!.value < set.feedMgPerL!.value &&
  set.permeateLPerH!.value > 0 &&
  set.drainLPerH!.value > 0 &&
  set.membranePressureKPaGauge!.value > 0;
