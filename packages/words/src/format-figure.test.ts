import { expect, it } from "vitest";
import { formatFigure } from "./format-figure.ts";

/** GUM 7.2.6: digits of a value go no further than its uncertainty backs; a meter's last step is the other bound. */
it("shows what the meter showed, not a nought more because the uncertainty is small", () => {
  const delivered = { value: 22, u: 0.4, unit: "ppm" } as const;
  expect(formatFigure(delivered)).toEqual({ text: "22.0", uText: "0.8" });
  expect(formatFigure({ ...delivered, decimalsRead: 0 })).toEqual({ text: "22", uText: "0.8" });
  expect(formatFigure({ ...delivered, value: 22.4, decimalsRead: 1 }, ",").text).toBe("22,4");
});

it("shows fewer than the meter where the uncertainty is large", () => {
  expect(formatFigure({ value: 301.25, u: 3.4, unit: "ppm", decimalsRead: 2 }).text).toBe("301");
});
