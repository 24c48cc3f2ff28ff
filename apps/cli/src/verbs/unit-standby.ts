import { known, mapOutcome } from "@tapside/quantities";
import { firstDraw, nightRunning } from "@tapside/reverse-osmosis";
import { all, notNegative } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { emptyTankOfRow, unitOfRow } from "./unit-row.ts";

/** `tapside unit standby`: hours of standing → first draw, waste before judging, and what runs at night when a valve leaks. */
export const unitStandbyVerb = rowVerb({
  summary:
    "first draw after standing a row, how long to waste before judging, and what runs at night if a valve leaks",
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
  ],
  reads: all({
    unit: unitOfRow,
    at: emptyTankOfRow,
    standingHours: notNegative("standing_h", 8),
    backLeakLPerHBar: notNegative("back_leak_L_h_bar", 0),
    hysteresis: notNegative("shutoff_hysteresis", 0.1),
    shutOffSeepLPerH: notNegative("shutoff_seep_L_h", 0),
  }),
  answer: ({ unit, at, standingHours, backLeakLPerHBar, hysteresis, shutOffSeepLPerH }) => {
    const leaky = { ...unit, backLeakLPerHBar, shutOff: { ...unit.shutOff, hysteresis } };
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
      });
    });
  },
});
