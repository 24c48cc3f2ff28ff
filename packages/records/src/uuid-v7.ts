/**
 * A UUID version 7 from the milliseconds since 1970 and ten random bytes handed in.
 * Source: RFC 9562, section 5.7.
 */
export function uuidV7(unixMs: number, random: Uint8Array): string {
  if (random.length < 10) throw new Error("uuidV7 needs ten random bytes");
  const tail = random.slice(0, 10);
  tail[0] = (tail[0]! & 0x0f) | 0x70;
  tail[2] = (tail[2]! & 0x3f) | 0x80;
  const hex = unixMs.toString(16).padStart(12, "0") + [...tail].map(twoDigits).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}

const twoDigits = (byte: number): string => byte.toString(16).padStart(2, "0");
