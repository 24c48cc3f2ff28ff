import { sha256 } from "@noble/hashes/sha2.js";

/** SHA-256 of text (as UTF-8) or bytes, in lower-case hex. Source: FIPS 180-4. */
export function sha256Hex(data: string | Uint8Array): string {
  const bytes = typeof data === "string" ? new TextEncoder().encode(data) : data;
  return [...sha256(bytes)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
