import { expect, it } from "vitest";
import { signOf } from "./sign.ts";

/** ISO/IEC 18004: a finder pattern of 7 × 7 modules, outer ring dark, in three corners and not in the fourth (from memory, unverified). */
it("has a finder in three corners, and four modules of white around", () => {
  const { modules, dark } = signOf("https://tapside.example/#/s/1AGC-GCX7");
  const isDark = new Set(dark.map(([x, y]) => `${x} ${y}`));
  const ring = (left: number, top: number) =>
    [...Array(7).keys()].every((i) =>
      [`${left + i} ${top}`, `${left + i} ${top + 6}`, `${left} ${top + i}`, `${left + 6} ${top + i}`].every(
        (at) => isDark.has(at),
      ),
    );
  const far = modules - 4 - 7;
  expect([ring(4, 4), ring(far, 4), ring(4, far), ring(far, far)]).toEqual([true, true, true, false]);
  expect(dark.every(([x, y]) => Math.min(x, y) >= 4 && Math.max(x, y) < modules - 4)).toBe(true);
});
