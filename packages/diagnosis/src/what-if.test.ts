import { expect, it } from "vitest";
import { donorBank } from "./donors.ts";
import { allReadings } from "./drawn-case.ts";
import { loadEngine } from "./engine.ts";
import { posterior, usualAssumed } from "./posterior.ts";
import { seededRandom } from "./random.ts";
import { simulateCase } from "./simulate-case.ts";
import { TEST_IDS, TESTS } from "./test-catalogue.ts";
import { whatIf } from "./what-if.ts";

/** Both go by the same sums in another order: single precision leaves 1e-4 of a probability. */
it("what a test would leave open is what is left open when it is taken", async () => {
  const engine = await loadEngine();
  for (const [i, cause] of (["scaledMembrane", "bypassOpen", "airChargeLow"] as const).entries()) {
    const one = simulateCase([cause], seededRandom(40 + i));
    const all = allReadings(one);
    const { expected } = donorBank(one.scene);
    const early = { temperature: all.temperature!, feedTds: all.feedTds!, permeateTds: all.permeateTds! };
    const ask = whatIf(engine, expected, early, usualAssumed);
    for (const test of TEST_IDS) {
      const shown = Object.fromEntries(TESTS[test].signs.map((sign) => [sign, one.readings[sign]]));
      const taken = posterior(engine, expected, { ...shown, ...early }, usualAssumed);
      const told = ask.after(TESTS[test].signs)(one.readings);
      taken.present.forEach((p, k) => {
        expect(Math.abs(told[k]! - p)).toBeLessThan(1e-4);
      });
    }
  }
});
