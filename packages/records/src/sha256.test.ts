import { expect, test } from "vitest";
import { sha256Hex } from "./sha256.ts";

// NIST, "SHA-256 examples" to FIPS 180-4 (one-block and two-block message).
test.each([
  ["abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"],
  [
    "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
    "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
  ],
])("SHA-256 of %s is the published one", (text, hex) => {
  expect(sha256Hex(text)).toBe(hex);
});
