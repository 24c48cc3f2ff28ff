import { expect, test } from "vitest";
import { uuidV7 } from "./uuid-v7.ts";

test("RFC 9562 appendix A.6: the example of version 7", () => {
  const random = Uint8Array.from([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f]);
  expect(uuidV7(0x017f22e279b0, random)).toBe("017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
});
