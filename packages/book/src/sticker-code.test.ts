import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { codeOfUnit, newStickerCode, readSticker, stickerLink } from "./sticker-code.ts";

const code = fc.uint8Array({ minLength: 7, maxLength: 7 }).map(newStickerCode);
const SIGNS = [..."0123456789ABCDEFGHJKMNPQRSTVWXY"];

describe("the code of a sticker", () => {
  it("is read back from the link, from small letters, without its dash, and with O, I, L for 0 and 1", () => {
    fc.assert(
      fc.property(code, (one) => {
        const sloppy = one.toLowerCase().replace("-", "").replaceAll("0", "o").replaceAll("1", "l");
        for (const text of [one, sloppy, stickerLink("https://tap.example/app/#/unit/x", one)])
          expect(readSticker(text)).toEqual({ kind: "known", value: one });
      }),
    );
  });
  it("notices every single wrong sign and every swap of neighbours", () => {
    fc.assert(
      fc.property(code, fc.nat(7), fc.constantFrom(...SIGNS), (one, at, sign) => {
        const signs = [...one.replace("-", "")];
        const wrong = signs.with(at, sign).join("");
        const [a, b] = [signs[at]!, signs[at + 1] ?? signs[at]!];
        const swapped =
          at < 7
            ? signs
                .with(at, b)
                .with(at + 1, a)
                .join("")
            : signs.join("");
        for (const text of [wrong, swapped])
          expect(readSticker(text).kind).toBe(text === signs.join("") ? "known" : "refused");
      }),
    );
  });
  it("is none of ours when it is something else", () => {
    for (const text of ["", "https://example.org/menu", "ABC", "K3M0-8PX!"])
      expect(readSticker(text)).toMatchObject({ kind: "refused", code: "sticker-unreadable" });
  });
  it("of a unit is always the same, and differs between units", () => {
    expect(codeOfUnit("a")).toBe(codeOfUnit("a"));
    const many = new Set(Array.from({ length: 2000 }, (_, i) => codeOfUnit(`unit ${i}`)));
    expect(many.size).toBe(2000);
  });
});
