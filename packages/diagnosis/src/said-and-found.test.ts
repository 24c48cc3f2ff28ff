import type { KeptVisit, UnitFile } from "@tapside/records";
import { expect, test } from "vitest";
import { saidAndFound } from "./said-and-found.ts";
import { SEARCH } from "./search-answers.ts";
import { drainAllNight, tasteComplaint } from "./testing/trials.ts";

const confirmed = (file: UnitFile, causes: readonly string[], closed = true): UnitFile => ({
  ...file,
  visits: file.visits.map((visit) =>
    visit.id === "today"
      ? ({
          ...visit,
          closed,
          technician: "J. Orme",
          answers: { ...visit.answers, [SEARCH.repaired]: causes, [SEARCH.found]: causes },
        } as KeptVisit)
      : visit,
  ),
});

test("a cause named first and found scores so; one that was not what the readings say stands lower", async () => {
  const said = await saidAndFound(
    [confirmed(drainAllNight(), ["checkValveFailed"]), confirmed(tasteComplaint(), ["coldWater"])],
    undefined,
  );
  expect(said).toHaveLength(2);
  const [right, wrong] = [...said].sort((a, b) => a.place - b.place);
  expect(right).toMatchObject({
    found: "checkValveFailed",
    saidFirst: "checkValveFailed",
    place: 1,
    technician: "J. Orme",
  });
  expect(right!.probability).toBeGreaterThan(0.9);
  expect(wrong!.place).toBeGreaterThan(1);
  expect(wrong!.saidFirst).not.toBe("coldWater");
});

test("only what was confirmed at a closed visit counts", async () => {
  const open = confirmed(drainAllNight(), ["checkValveFailed"], false);
  expect(await saidAndFound([open, confirmed(drainAllNight(), [])], undefined)).toEqual([]);
});
