import fc from "fast-check";
import { expect, it } from "vitest";
import { nowAndChanged, tankPair } from "./index.ts";

const curves = (svg: string) => [...svg.matchAll(/<path d="(M[^"]*L[^"]*)"/g)].map((one) => one[1]!);

it("the same change draws the same curve twice; half the height is drawn half as high, from nought", () => {
  const now = [
    { x: 0, y: 10 },
    { x: 2, y: 10 },
  ];
  const half = now.map(({ x, y }) => ({ x, y: y / 2 }));
  const picture = (changed: typeof now) =>
    nowAndChanged({
      theme: "light",
      title: "t",
      description: "d",
      axis: { from: "0", to: "2 h", end: 2 },
      panels: [{ label: "flow", now, changed, ends: "5" }],
    });
  const [same, again] = curves(picture(now));
  expect(same).toBe(again);
  const heights = curves(picture(half)).map((path) => 80 - Number(path.split(" ")[1]!.split("L")[0]));
  expect(heights[1]! / heights[0]!).toBeCloseTo(0.5, 2);
});

it("no drawing holds a number that is not one, and texts are escaped", () => {
  const any = fc.double({ noNaN: true, min: -1e6, max: 1e6 });
  fc.assert(
    fc.property(any, any, fc.string(), (a, b, label) => {
      const tank = { label, volumeL: a, storedL: b, usableL: a - b, mgPerL: b, said: label };
      const drawn = [
        tankPair({ theme: "dark", title: label, description: "<", tanks: [tank, tank] }),
        nowAndChanged({
          theme: "dark",
          title: label,
          description: "<",
          axis: { from: label, to: label, end: b },
          panels: [
            {
              label,
              now: [{ x: a, y: b }],
              changed: [
                { x: 0, y: a },
                { x: b, y: b },
              ],
              ends: label,
            },
          ],
        }),
      ].join("");
      expect(drawn).not.toMatch(/="[^"]*(NaN|Infinity)/);
      expect(drawn).not.toContain('"><<');
    }),
  );
});
