const DIGITS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

/** Base 64 with padding. Source: RFC 4648, section 4. */
export function toBase64(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let i = 0; i < bytes.length; i += 3) {
    const group = (bytes[i]! << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    const four = [18, 12, 6, 0].map((shift) => DIGITS[(group >> shift) & 63]).join("");
    parts.push(i + 2 < bytes.length ? four : four.slice(0, bytes.length - i + 1).padEnd(4, "="));
  }
  return parts.join("");
}

/** The bytes, or undefined when the text is not base 64. */
export function fromBase64(text: string): Uint8Array | undefined {
  if (text.length % 4 !== 0 || !/^[A-Za-z0-9+/]*={0,2}$/.test(text)) return undefined;
  const digits = text.replace(/=+$/, "");
  const bytes = new Uint8Array(Math.floor((digits.length * 3) / 4));
  let bits = 0;
  let held = 0;
  let next = 0;
  for (const digit of digits) {
    held = ((held << 6) | DIGITS.indexOf(digit)) & 0xffffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[next++] = (held >> bits) & 0xff;
  }
  return bytes;
}
