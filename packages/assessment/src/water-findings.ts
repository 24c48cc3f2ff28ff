import { known, propagate } from "@tapside/quantities";
import type { Phase, SlotId, UnitFile } from "@tapside/records";
import { applianceLimits } from "./appliance-limits.ts";
import type { Context, Figure, Finding } from "./assessment.ts";
import { amountOf, type PhaseReadings } from "./internal/amounts.ts";
import { note, type Scene } from "./internal/scene.ts";
import { cannotTell, judge } from "./judge.ts";
import { rulesOf } from "./limits.ts";
import { hasPermeatePump } from "./shut-off-ratio.ts";
import { suitability } from "./suitability.ts";
import { solidsAsRead } from "./water-figures.ts";

/** Delivered water as left is judged only when it was read again. */
export const waterAsLeft = (scene: Scene) =>
  scene.readings.deliveredTds
    ? [...applianceLimits(scene.readings, scene.phase, scene.file), ...suitability(scene)].filter(
        (one) => one.verdict !== "cannotTell",
      )
    : [];

/** Delivered water against every limit and against the membrane; feed water that needs no RO. */
export function waterFindings(scene: Scene): Finding[] {
  const { readings, phase, file, context } = scene;
  const limits = applianceLimits(readings, phase, file);
  const delivered = solidsAsRead("deliveredTds", readings, file);
  const unjudged = limits.some((one) => one.id === "delivered")
    ? []
    : note("deliveredNoLimit", phase, delivered);
  return [
    ...limits,
    ...unjudged,
    ...suitability(scene),
    ...overMembrane(scene),
    ...optional(readings, phase, file, context),
  ];
}

/**
 * Water from the tank is normally 1.4 to 1.8 times the permeate to waste: most filling happens against pressure. A vented tank fills
 * against none, and a permeate pump keeps it off the element; above the same bound something is wrong there too.
 */
function overMembrane({ readings, phase, file, context }: Scene): Finding[] {
  const [tank, membrane] = (["deliveredTds", "permeateTds"] as const).map((slot) =>
    amountOf(slot, readings, file),
  );
  if (tank?.kind !== "known" || membrane?.kind !== "known" || !(membrane.value.value > 0)) return [];
  const ratio = propagate(([d, p]) => d! / p!, [tank.value, membrane.value]);
  const figure: Figure = { ...ratio, unit: "× to waste" };
  if (!Number.isFinite(ratio.value) || !Number.isFinite(ratio.u)) return [];
  if (file.unit.remineraliser || file.unit.blendValve)
    return [
      {
        id: "deliveredOverMembrane",
        phase,
        verdict: "information",
        figure,
        consequence: 2,
        detail: { why: "remineralised" },
      },
    ];
  const judged = judge(
    "deliveredOverMembrane",
    phase,
    known(figure),
    rulesOf(context).deliveredOverMembrane,
    55,
  );
  const why = fillsFreely(file);
  return [why ? { ...judged, detail: { ...judged.detail, tank: why } } : judged];
}

/** Why the element does not feel the tank's pressure, where it does not. */
function fillsFreely(file: UnitFile): "vented" | "pumped" | undefined {
  if (file.unit.ventedTank) return "vented";
  return hasPermeatePump(file) ? "pumped" : undefined;
}

/** What dissolved solids do not show, and where each is read in the feed. */
const NOT_IN_TDS = {
  hardness: "hardness",
  chloride: "feedChloride",
  alkalinity: "feedAlkalinity",
  silica: "feedSilica",
  pH: "feedPh",
  chlorine: "chlorineBefore",
} as const satisfies Readonly<Record<string, SlotId>>;

function optional(readings: PhaseReadings, phase: Phase, file: UnitFile, context: Context): Finding[] {
  const feed = solidsAsRead("feedTds", readings, file);
  const limit = rulesOf(context).optionalFeedTds;
  if (feed.kind !== "known") return [cannotTell("feedTds", phase, feed, 20)];
  if (feed.value.value > limit.high) return note("feedTds", phase, feed);
  const notMeasured = Object.entries(NOT_IN_TDS).flatMap(([name, slot]) => (readings[slot] ? [] : [name]));
  const scale = feed.value.scale ?? "NaCl";
  return [
    {
      id: "roOptional",
      phase,
      verdict: "information",
      figure: feed.value,
      limit: { ...limit, scale },
      missing: notMeasured,
      consequence: 50,
    },
  ];
}
