import type { Finding } from "@tapside/assessment";
import { describe, expect, it } from "vitest";
import { en } from "./en/index.ts";
import { es } from "./es/index.ts";

const boosted = (verdict: Finding["verdict"], feed: number, feedIs: string): Finding => ({
  id: "boostedPressure",
  phase: "asFound",
  verdict,
  consequence: 1,
  detail: { feed, unit: "psi", feedIs },
});
const switched = (pattern: string): Finding => ({
  id: "feedPressure",
  phase: "asFound",
  verdict: "outside",
  consequence: 1,
  detail: { pattern },
});
const said = (finding: Finding) => [en, es].map((words) => words.finding(finding).reason);

describe("what is said of the feed of a unit with a booster", () => {
  it("a low feed that the pump makes up is told as both", () => {
    expect(said(boosted("within", 35.04, "below"))).toEqual([
      "feed of 35 psi, below the usual band; the booster makes it up",
      "entrada de 35 psi, menos de lo usual; la bomba lo compensa",
    ]);
  });
  it("one it does not make up, or that needed nothing, is told beside the pump", () => {
    const either = ["the booster adds to a feed of 35 psi", "la bomba se suma a una entrada de 35 psi"];
    expect(said(boosted("outside", 35, "below"))).toEqual(either);
    expect(said(boosted("within", 35, "notBelow"))).toEqual(either);
  });
  it("a pump its switch keeps off, or may keep off, is told as that", () => {
    expect(said(switched("boosterOff"))[0]).toMatch(/it stays off$/);
    expect(said(switched("boosterOff"))[1]).toMatch(/sigue apagada$/);
    expect(said(switched("boosterMaybeOff"))[0]).toMatch(/may keep it off/);
    expect(said(switched("boosterMaybeOff"))[1]).toMatch(/puede dejar apagada/);
  });
});
