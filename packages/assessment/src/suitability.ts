import { known, mapOutcome, type Outcome, quantile } from "@tapside/quantities";
import type { SlotId, UnitFile } from "@tapside/records";
import { type LimitAnswer, type PropertyId, suits, type WaterLimit } from "@tapside/water";
import { type BlankField, possibleMakes, possibleNeeds } from "./appliance-water.ts";
import type { Figure, Finding } from "./assessment.ts";
import { type DeliveredWaters, deliveredWaters } from "./delivered-waters.ts";
import { amountOf, usable } from "./internal/amounts.ts";
import type { Scene } from "./internal/scene.ts";
import { convertTds, scaleDoubt } from "./internal/tds-scale.ts";
import { judge } from "./judge.ts";

type KeptAppliance = UnitFile["appliances"][number];
type Judged = Pick<Finding, "verdict" | "figure" | "distance" | "rule"> & {
  readonly limit: WaterLimit;
  readonly missing: readonly string[];
};

/** Guidance counts less than the appliance's own label. */
const CONSEQUENCE = 55;

/**
 * Delivered water against the published needs of every appliance: coffee standard, hardness in steam, silica, chloride
 * against steel grade and temperature, low-mineral water and free CO2 on copper and brass, chlorine. What is not read is
 * completed from feed and passage; a blank of the appliance counts only where the answer hangs on it.
 */
export function suitability(scene: Scene): Finding[] {
  const waters = deliveredWaters(scene);
  return scene.file.appliances.flatMap((appliance) => ofAppliance(appliance, waters, scene));
}

function ofAppliance(
  appliance: KeptAppliance,
  waters: Outcome<DeliveredWaters>,
  scene: Scene,
): readonly Finding[] {
  const { blank } = possibleMakes(appliance);
  const judged = possibleNeeds(appliance).map(({ limits, onlyOnCopper }) =>
    agreed(
      limits.map((limit) => judgedBy(limit, waters, scene)),
      blank.filter((field) => hangsOn(field, limits, onlyOnCopper)),
    ),
  );
  return told(appliance.name ?? "", blank.includes("steelTable") ? hotterThanTold(judged) : judged, scene);
}

const hangsOn = (field: BlankField, limits: readonly WaterLimit[], onlyOnCopper: boolean) =>
  field === "appliance.copperOrBrass" ? onlyOnCopper : field !== "steelTable" && limits.length > 1;

const STEEL_NEED: WaterLimit = { property: "chloride", unit: "mg/L", source: "" };

/** Chloride on a steel hotter than its table: what the table would keep is not kept for that, what it breaks stays broken. */
function hotterThanTold(judged: readonly Judged[]): readonly Judged[] {
  const [chloride, rest] = [true, false].map((wanted) =>
    judged.filter(({ limit }) => (limit.property === "chloride") === wanted),
  );
  const open = (chloride!.length > 0 ? chloride! : [untold]).map((one) =>
    one.verdict === "outside" ? one : { ...untold, missing: [...one.missing, "steelTable"] },
  );
  return [...rest!, ...open];
}

const untold: Judged = { verdict: "cannotTell", limit: STEEL_NEED, missing: [] };

/** One answer where all possible limits agree; otherwise the blanks that would tell. */
function agreed(all: readonly Judged[], blank: readonly BlankField[]): Judged {
  const kept = all.every(({ verdict }) => verdict === "within");
  const first = all[0]!;
  if (kept) return all.reduce((a, b) => ((a.limit.high ?? 0) <= (b.limit.high ?? 0) ? a : b));
  const sure =
    !blank.includes("appliance.copperOrBrass") && all.every((one) => one.verdict === first.verdict);
  if (sure) return all.reduce((a, b) => ((a.limit.high ?? 0) >= (b.limit.high ?? 0) ? a : b));
  return {
    verdict: "cannotTell",
    limit: first.limit,
    missing: [...new Set([...all.flatMap((one) => one.missing), ...blank])],
  };
}

/** Where each property is read in the delivered water. */
const READ: Readonly<Partial<Record<PropertyId, readonly SlotId[]>>> = {
  tds442: ["deliveredTds"],
  conductivity25: ["deliveredTds"],
  hardness: ["deliveredHardness"],
  alkalinity: ["deliveredAlkalinity"],
  chloride: ["deliveredChloride"],
  silica: ["deliveredSilica"],
  pH: ["deliveredPh"],
  totalChlorine: ["deliveredChlorine", "chlorineAfter"],
};

/** What would tell a property that cannot be read by itself. */
const TOLD_BY: Readonly<Partial<Record<PropertyId, SlotId>>> = {
  calciumHardness: "deliveredHardness",
  freeCo2: "deliveredPh",
};

/** What a remineraliser leaves as it was. */
const UNTOUCHED: ReadonlySet<PropertyId> = new Set([
  "chloride",
  "silica",
  "sulfate",
  "sodium",
  "totalChlorine",
]);

function judgedBy(limit: WaterLimit, waters: Outcome<DeliveredWaters>, scene: Scene): Judged {
  const slot = READ[limit.property]?.find((one) => usable(scene.readings[one]));
  if (slot) return byReading(limit, slot, scene);
  const teller = TOLD_BY[limit.property] ?? READ[limit.property]?.[0] ?? "deliveredTds";
  const open = (names: readonly string[]): Judged => ({ verdict: "cannotTell", limit, missing: names });
  if (limit.property === "totalChlorine") return open(["chlorineAfter"]);
  if (waters.kind !== "known") return open(waters.kind === "missing" ? waters.missing : [teller]);
  if (waters.value.through === "remineraliser" && !UNTOUCHED.has(limit.property)) return open([teller]);
  const answers = suits(waters.value.waters, [limit]);
  const answer = answers.kind === "known" ? answers.value[0] : undefined;
  return answer && (answer.answer === "within" || answer.answer === "outside")
    ? { verdict: answer.answer, limit, missing: [], ...spread(answer), rule: "samples-95" }
    : open([teller]);
}

/** Solids on a named scale carry it beside their unit. */
const unitOf = ({ property, unit }: WaterLimit) =>
  property === "tds442" ? ({ unit: "ppm", scale: "442" } as const) : { unit };

/** The middle of the samples, and a standard uncertainty as wide as their 90 %. */
function spread({ values, limit, answer }: LimitAnswer): Pick<Judged, "figure" | "distance"> {
  const [low, middle, high] = [0.05, 0.5, 0.95].map((at) => quantile(values, at));
  return {
    figure: { value: middle!, u: (high! - low!) / 3.29, ...unitOf(limit) },
    distance: answer === "within" ? -1 : 1,
  };
}

function byReading(limit: WaterLimit, slot: SlotId, { readings, phase, file }: Scene): Judged {
  const amount = amountOf(slot, readings, file);
  const figure = mapOutcome(amount, (value): Outcome<Figure> => known(inLimitUnit(value, limit)));
  const found = judge("need", phase, figure, { ...edges(limit), unit: limit.unit, source: limit.source }, 1);
  const reading = readings[slot];
  const below = reading?.notDetected && limit.low === undefined && reading.value! <= (limit.high ?? 0);
  const { verdict, figure: shown, distance, rule, missing = [] } = found;
  return {
    limit,
    missing,
    ...(shown && { figure: shown }),
    ...(below
      ? { verdict: "within", distance: -1, rule: "not-detected" }
      : { verdict, ...(distance !== undefined && { distance }), ...(rule && { rule }) }),
  };
}

/** Solids are read as sodium chloride; limits on them stand on another scale. */
function inLimitUnit(
  { value, u }: { readonly value: number; readonly u: number },
  limit: WaterLimit,
): Figure {
  const column = limit.property === "tds442" ? "442" : limit.property === "conductivity25" ? "EC" : undefined;
  if (!column) return { value, u, ...unitOf(limit) };
  const shown = convertTds(value, "NaCl", column);
  const scaled = value > 0 ? (u * shown) / value : u;
  return { value: shown, u: Math.hypot(scaled, scaleDoubt(value) * shown), ...unitOf(limit) };
}

const edges = ({ low, high }: WaterLimit) => ({
  ...(low !== undefined && { low }),
  ...(high !== undefined && { high }),
});

/** Each need that is not kept by itself; those kept, and those that cannot be told, in one finding each. */
function told(appliance: string, judged: readonly Judged[], { phase }: Scene): readonly Finding[] {
  const loud = judged.filter(({ verdict }) => verdict === "outside" || verdict === "tooClose");
  const kept = judged.filter(({ verdict }) => verdict === "within");
  const open = judged.filter(({ verdict }) => verdict === "cannotTell");
  const names = (of: readonly Judged[]) => [...new Set(of.map(({ limit }) => limit.property))].join(" ");
  const base = { phase, detail: { appliance } } as const;
  return [
    ...loud.map((one) => alone(appliance, one, phase)),
    ...(open.length === 0
      ? []
      : [
          {
            ...base,
            id: "needsOpen",
            verdict: "cannotTell" as const,
            missing: [...new Set(open.flatMap((one) => one.missing))],
            detail: { appliance, open: names(open) },
            consequence: 0.3 * CONSEQUENCE,
          },
        ]),
    ...(kept.length === 0
      ? []
      : [
          {
            ...base,
            id: "needs",
            verdict: "within" as const,
            distance: Math.max(...kept.map(({ distance }) => distance ?? -1)),
            detail: { appliance, kept: names(kept) },
            consequence: 0.1 * CONSEQUENCE,
          },
        ]),
  ];
}

function alone(appliance: string, { limit, missing: _, ...one }: Judged, phase: Finding["phase"]): Finding {
  return {
    id: `need:${limit.property}`,
    phase,
    ...one,
    limit: {
      ...edges(limit),
      ...unitOf(limit),
      source: limit.source,
      detail: { appliance },
    },
    detail: { appliance, ...(one.rule === "samples-95" && { why: "completed" }) },
    consequence: CONSEQUENCE * (one.verdict === "outside" ? 1 : 0.6),
  };
}
