import { known, mapOutcome } from "@tapside/quantities";
import {
  type Conditions,
  firstDraw,
  type Leak,
  nightOfLeak,
  nightRunning,
  type Unit,
} from "@tapside/reverse-osmosis";
import { all, notNegative, optionalNotNegative, word } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { emptyTankOfRow, unitOfRow } from "./unit-row.ts";

/** `tapside unit standby`: hours of standing → first draw, waste before judging, and what runs at night when a valve leaks. */
export const unitStandbyVerb = rowVerb({
  summary:
    "first draw after standing a row, how long to waste before judging, and what runs at night if a valve or a tap leaks",
  columns: [
    "first_draw_mg_L",
    "steady_mg_L",
    "waste_L_low",
    "waste_L",
    "waste_L_high",
    "waste_min_low",
    "waste_min",
    "waste_min_high",
    "night",
    "night_drain_L_day",
    "cycle_h",
    "leak_night",
    "leak_starts_low",
    "leak_starts",
    "leak_starts_high",
    "leak_drain_L",
    "leak_first_mg_L",
    "sound_first_mg_L",
  ],
  reads: all({
    unit: unitOfRow,
    at: emptyTankOfRow,
    standingHours: notNegative("standing_h", 8),
    backLeakLPerHBar: notNegative("back_leak_L_h_bar", 0),
    hysteresis: optionalNotNegative("shutoff_hysteresis"),
    shutOffSeepLPerH: notNegative("shutoff_seep_L_h", 0),
    leakAt: word("leak_at", ["tap", "checkValve"], "tap"),
    leakMLPerMin: notNegative("leak_mL_min", 0),
  }),
  answer: (read) => {
    const { unit, at, standingHours, backLeakLPerHBar, hysteresis, shutOffSeepLPerH } = read;
    const told = hysteresis === undefined ? unit : { ...unit, shutOff: { ...unit.shutOff, hysteresis } };
    const leaky = { ...told, backLeakLPerHBar };
    return mapOutcome(firstDraw(unit, at, { standingHours }), (draw) => {
      const night = nightRunning(leaky, at, { shutOffSeepLPerH });
      const runs = night.kind === "known" ? night.value : undefined;
      return known({
        first_draw_mg_L: draw.firstMgPerL,
        steady_mg_L: draw.steadyMgPerL,
        waste_L_low: draw.litres.low,
        waste_L: draw.litres.value,
        waste_L_high: draw.litres.high,
        waste_min_low: draw.minutes.low,
        waste_min: draw.minutes.value,
        waste_min_high: draw.minutes.high,
        night: runs?.how ?? "",
        night_drain_L_day: runs?.drainLPerDay ?? "",
        cycle_h: runs?.cycle?.hours ?? "",
        ...leakCells({ ...read, unit: told }),
      });
    });
  },
});

interface LeakRead {
  readonly unit: Unit;
  readonly at: Conditions;
  readonly standingHours: number;
  readonly leakAt: Leak["at"];
  readonly leakMLPerMin: number;
}

/** What drips so fast does while nobody draws; blank when nothing was told to drip or it cannot be told. */
function leakCells({
  unit,
  at,
  standingHours,
  leakAt,
  leakMLPerMin,
}: LeakRead): Readonly<Record<string, number | string>> {
  if (!(leakMLPerMin > 0)) return {};
  const leak = { at: leakAt, lPerH: 0.06 * leakMLPerMin };
  const night = nightOfLeak(unit, at, { leak, hours: standingHours });
  if (night.kind !== "known") return { leak_night: night.kind === "refused" ? night.code : night.kind };
  const { starts, drainL, firstMgPerL, soundMgPerL } = night.value;
  return {
    leak_night: night.value.how,
    leak_starts_low: starts.low,
    leak_starts: starts.value,
    leak_starts_high: starts.high,
    leak_drain_L: drainL,
    leak_first_mg_L: firstMgPerL,
    sound_first_mg_L: soundMgPerL,
  };
}
