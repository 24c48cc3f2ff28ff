import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  COLOURS,
  contrast,
  escapeText,
  findingMark,
  lifeStrip,
  lineOfWater,
  numeralSvg,
  waterColour,
} from "./index.ts";

describe("contrast (WCAG 2.2 definition)", () => {
  it("black on white is 21 (WCAG 2.2)", () => expect(contrast("#000000", "#FFFFFF")).toBeCloseTo(21, 6));
  it.each(["light", "dark", "paper"] as const)("every text of %s reaches 7 on ground and tint", (theme) => {
    const { ink, ink2, ground, tint } = COLOURS[theme];
    for (const text of [ink, ink2])
      for (const paper of [ground, tint]) expect(contrast(text, paper)).toBeGreaterThanOrEqual(7);
  });
});

it.each(["light", "dark"] as const)("more dissolved lies further from the ground in %s", (theme) => {
  const away = (mgPerL: number) => contrast(waterColour(mgPerL, theme), COLOURS[theme].ground);
  const steps = [1, 5, 10, 50, 200, 500, 1000, 5000].map(away);
  expect(steps).toEqual([...steps].sort((a, b) => a - b));
});

it("no drawing holds a number that is not one, whatever it is asked", () => {
  const anyNumber = fc.double({ noNaN: true, min: -1e6, max: 1e6 });
  fc.assert(
    fc.property(anyNumber, fc.double({ noNaN: true, min: 0, max: 1e4 }), fc.string(), (d, flow, text) => {
      const drawings = [
        findingMark({ kind: "distance", d, theme: "light", heightPx: 99 }),
        numeralSvg({ text, heightPx: 40, style: "hollow", theme: "dark", label: text }),
        lifeStrip({
          points: [
            { place: 0, flowRatio: 1 },
            { place: 1, flowRatio: d, saltRatio: flow, today: true },
          ],
          theme: "paper",
          title: text,
          description: text,
          words: { salt: "s", flow: "f", fresh: "n", today: "t" },
        }),
        lineOfWater({
          bands: [
            { part: "tap", y: 0, height: 48 },
            { part: "element", y: 48, height: 200 },
          ],
          theme: "light",
          width: 300,
          feedLPerMin: flow,
          permeateLPerMin: flow / 3,
          feedMgPerL: flow,
          permeateMgPerL: flow,
          flowing: true,
          bypass: "shut",
        }),
      ];
      for (const drawing of drawings) expect(drawing).not.toMatch(/NaN|Infinity|undefined/);
    }),
  );
});

it("text is escaped", () => expect(escapeText(`<a b="c">&'`)).toBe("&lt;a b=&quot;c&quot;&gt;&amp;&#39;"));

describe("the life strip", () => {
  const strip = (flowRatio: number, saltRatio: number) =>
    lifeStrip({
      points: [
        { place: 0, flowRatio: 1 },
        { place: 1, flowRatio, saltRatio, today: true },
      ],
      theme: "paper",
      title: "t",
      description: "d",
      words: { salt: "s", flow: "f", fresh: "n", today: "t" },
    });
  const wedges = (svg: string) => svg.match(/H[\d.]+L[\d.]+ -?[\d.]+Z/g)?.length ?? 0;
  it("shows a wedge for what lies off it, never a mark at a wrong height", () => {
    expect(wedges(strip(1.3, 1.39))).toBe(0);
    expect(wedges(strip(1.3, 3.9))).toBe(1);
    expect(wedges(strip(0.5, 3.9))).toBe(2);
  });
});
