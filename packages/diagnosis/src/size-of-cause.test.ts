import { expect, it } from "vitest";
import type { CauseId } from "./causes.ts";
import { allReadings } from "./drawn-case.ts";
import { fitCauses } from "./fit-cause.ts";
import { soundHidden } from "./hidden.ts";
import { seededRandom } from "./random.ts";
import { simulateCase } from "./simulate-case.ts";
import { sizeOfCause, toldOf } from "./size-of-cause.ts";

const CAUSES: readonly CauseId[] = [
  "fouledMembrane",
  "restrictorBlocked",
  "airChargeLow",
  "preFilterClogged",
];

/** Whether the interval of every measure holds what was simulated. */
function held(cause: CauseId, seed: number): readonly boolean[] {
  const { scene, hidden, ...one } = simulateCase([cause], seededRandom(seed));
  const size = sizeOfCause(cause, fitCauses(scene, [cause], allReadings({ scene, hidden, ...one })), scene);
  return (size?.measures ?? []).map(({ measure, low, high }) => {
    const truth = toldOf(measure, hidden, soundHidden(scene))!;
    return low <= truth && truth <= high;
  });
}

it("simulated: intervals of sizes hold the truth about as often as they say", () => {
  const all = CAUSES.flatMap((cause) => Array.from({ length: 12 }, (_, i) => held(cause, 700 + i)).flat());
  expect(all.length).toBe(48);
  // 95 in 100 would be 45.6 of 48; fewer than 42 happens by chance in 2 of 100 runs.
  expect(all.filter(Boolean).length).toBeGreaterThanOrEqual(42);
});

it("without the readings that tell it, a size is wide", () => {
  const { scene, readings } = simulateCase(["fouledMembrane"], seededRandom(8));
  const widthFrom = (told: typeof readings | { readonly feedTds: number }) => {
    const [size] = sizeOfCause("fouledMembrane", fitCauses(scene, ["fouledMembrane"], told), scene)!.measures;
    return size!.high / size!.low;
  };
  expect(widthFrom({ feedTds: readings.feedTds })).toBeGreaterThan(1.5 * widthFrom(readings));
});
