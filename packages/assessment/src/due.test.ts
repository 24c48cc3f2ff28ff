import { describe, expect, it } from "vitest";
import { assess } from "./assess.ts";
import { context } from "./testing/build.ts";
import { tasteComplaint } from "./testing/trials.ts";

/** The taste complaint with work done at today's visit. */
function withWork(work: Readonly<Record<string, { readonly state: "done"; readonly part?: string }>>) {
  const file = tasteComplaint();
  const visits = [...file.visits.slice(0, -1), { ...file.visits.at(-1)!, work }];
  return assess({ ...file, visits }, "today", context);
}

const due = (judged: ReturnType<typeof withWork>, role: string) =>
  judged.due.find((one) => one.role === role);

/** Pre-filter 12 months, membrane 24, by date or litres, whichever first: common practice, no source. */
describe("what is due next", () => {
  it("is the part that is in, while nothing was changed: the carbon long past its date and litres", () => {
    const judged = withWork({});
    expect(due(judged, "carbon")).toMatchObject({ byDate: "2026-10-26", overdue: true });
    expect(due(judged, "element")).toMatchObject({ byDate: "2026-10-20", overdue: true });
  });

  it("is the new part once it was changed: 12 and 24 months from today, with its litres before it", () => {
    const judged = withWork({
      "replace:carbon": { state: "done" },
      "replace:element": { state: "done", part: "part1" },
    });
    expect(due(judged, "carbon")).toMatchObject({ byDate: "2027-11-25", overdue: false });
    expect(due(judged, "carbon")?.litresLeft?.low).toBe(57_000);
    expect(due(judged, "element")).toMatchObject({ byDate: "2028-11-25", overdue: false });
  });

  it("leaves the second cartridge of a role due when only the first was changed", () => {
    const file = tasteComplaint();
    const second = { ...file.parts[0]!, id: "second", position: 9 };
    const today = { ...file.visits.at(-1)!, work: { "replace:carbon": { state: "done" } as const } };
    const judged = assess(
      { ...file, parts: [...file.parts, second], visits: [...file.visits.slice(0, -1), today] },
      "today",
      context,
    );
    expect(judged.due.filter((one) => one.role === "carbon").map((one) => one.overdue)).toEqual([
      false,
      true,
    ]);
    expect(judged.tasks.map((one) => one.id)).toContain("replace:carbon:second");
  });
});
