import type { Timer } from "@tapside/records";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ClockSight, clockAcrossRestart, clockNotice, timerState } from "./index.ts";

const HOUR = 3_600_000;
const start = Date.UTC(2026, 9, 25, 0, 30);
const timer: Timer = { what: "contact", startedMs: start, durationMs: HOUR };

describe("a timer", () => {
  it("counts an hour across the end of summer time: instants have no zone (25 Oct 2026, 01:00 UTC in Europe)", () => {
    const clockOf = (ms: number) =>
      new Date(ms).toLocaleTimeString("en-GB", {
        timeZone: "Europe/London",
        hour: "2-digit",
        minute: "2-digit",
      });
    expect([clockOf(start), clockOf(start + HOUR)]).toEqual(["01:30", "01:30"]);
    expect(timerState(timer, start + HOUR - 1).ready).toBe(false);
    expect(timerState(timer, start + HOUR).ready).toBe(true);
  });
  it("is never negative, not even when the clock went back before its start", () => {
    expect(timerState(timer, start - 5 * HOUR).elapsedMs).toBe(0);
  });
  it("stops counting when it is stopped", () => {
    expect(timerState({ ...timer, stoppedMs: start + 1000 }, start + HOUR).elapsedMs).toBe(1000);
  });
});

describe("jumps of the clock", () => {
  it("watched, the elapsed time is the true one whatever the wall clock was set to", () => {
    const tick = fc.record({
      trueMs: fc.integer({ min: 200, max: 60_000 }),
      setByMs: fc.oneof(fc.constant(0), fc.integer({ min: -9e6, max: 9e6 })),
    });
    fc.assert(
      fc.property(fc.array(tick, { maxLength: 40 }), (ticks) => {
        let sight: ClockSight = { wallMs: start, steadyMs: 0 };
        let jumpedMs = 0;
        let trueMs = 0;
        let missed = 0;
        for (const one of ticks) {
          const now = {
            wallMs: sight.wallMs + one.trueMs + one.setByMs,
            steadyMs: sight.steadyMs + one.trueMs,
          };
          const notice = clockNotice(sight, now, true);
          if (notice.kind === "jumped") jumpedMs += notice.byMs;
          else missed += Math.abs(one.setByMs);
          trueMs += one.trueMs;
          sight = now;
        }
        const { elapsedMs } = timerState({ ...timer, jumpedMs }, sight.wallMs);
        expect(Math.abs(elapsedMs - trueMs)).toBeLessThanOrEqual(missed);
      }),
    );
  });
  it("unwatched, ahead may be sleep, back is certain", () => {
    const before = { wallMs: start, steadyMs: 0 };
    expect(clockNotice(before, { wallMs: start + HOUR, steadyMs: 1000 }, false)).toEqual({
      kind: "unseen",
      forMs: HOUR - 1000,
    });
    expect(clockNotice(before, { wallMs: start - HOUR, steadyMs: 1000 }, false)).toEqual({
      kind: "jumped",
      byMs: -HOUR - 1000,
    });
  });
  it("across a restart only a step back shows", () => {
    expect(clockAcrossRestart(start, start + HOUR)).toEqual({ kind: "steady" });
    expect(clockAcrossRestart(start, start - HOUR)).toEqual({ kind: "jumped", byMs: -HOUR });
  });
});
