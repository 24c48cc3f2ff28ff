import { canonicalJson, unitFile } from "@tapside/records";
import { en } from "@tapside/words/en";
import { describe, expect, it } from "vitest";
import type { RecordContent } from "./block.ts";
import { buildClaim } from "./claim.ts";
import { dayOf } from "./internal/day-of.ts";
import { book } from "./test-support/demo-record.ts";

const issuedAt = "2026-11-25T00:00:00Z";

/** A unit with a point opened before its last visit; its site changes hands on the day of that one. */
const file = [...book.openPoint.values()]
  .map((point) => ({ point, of: unitFile(book, point.unit ?? "")! }))
  .find(
    ({ point, of }) => of.visits.findIndex((visit) => visit.id === point.openedVisit) + 1 < of.visits.length,
  )!.of;
const since = dayOf(file.visits.at(-1)?.startedAt);

const change = (id: string, owner: string, day: string, seesEarlier: boolean) =>
  [id, { id, site: file.site.id, owner, since: day, seesEarlier }] as const;

const claimOf = (seesEarlier: boolean) =>
  buildClaim({
    book: {
      ...book,
      ownership: new Map([
        change("a", "First Owner", "2015-01-01", true),
        change("b", "Second Owner", since, seesEarlier),
      ]),
    } as never,
    file,
    words: en,
    issuedAt,
  });

/** All it holds but its parts, which say on which day they were fitted as long as they serve. */
const heldBeside = (claim: RecordContent): string =>
  canonicalJson({
    blocks: claim.blocks.filter((block) => !("title" in block) || block.title !== en.claim.titles.parts),
    inputs: { ...(claim.inputs as object), parts: [] },
  } as never);

describe("the claim file after a change of owner", () => {
  const before = file.visits.filter((visit) => dayOf(visit.startedAt) < since);
  it("holds nothing from before the cut-off, in words or data", () => {
    const text = heldBeside(claimOf(false));
    expect(before.length).toBeGreaterThan(0);
    for (const visit of before) expect(text).not.toContain(`"${visit.id}"`);
    expect(text).not.toContain("First Owner");
    expect(text).toContain("Second Owner");
  });
  it("holds everything where that was agreed", () => {
    const text = heldBeside(claimOf(true));
    for (const visit of file.visits) expect(text).toContain(`"${visit.id}"`);
    expect(text).toContain("First Owner");
  });
});

it("says in words what the owner decided where the feed needs no RO", () => {
  const asked = { name: "A. Reed", role: "manager", decision: "takeOut" } as const;
  const visits = file.visits.map((visit) => ({ ...visit, answers: { ...visit.answers, roOptional: asked } }));
  const claim = buildClaim({ book, file: { ...file, visits }, words: en, issuedAt });
  const text = canonicalJson(claim.blocks as never);
  expect(text).toContain("asked A. Reed, manager");
  expect(text).not.toContain("takeOut");
});
