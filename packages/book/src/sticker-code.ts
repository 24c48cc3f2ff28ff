import { known, type Outcome, refused } from "@tapside/quantities";
import { type Book, sha256Hex } from "@tapside/records";

/** 31 signs that are hard to mistake: no I, L, O, U, Z. */
const SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXY";
const BODY = 7;

/** Weights 1 to 7 modulo the prime 31: every single wrong sign and every swap of two signs changes the check sign. */
const checkSign = (body: string): string =>
  SIGNS[[...body].reduce((sum, sign, i) => sum + (i + 1) * SIGNS.indexOf(sign), 0) % SIGNS.length]!;

const written = (body: string): string => `${body.slice(0, 4)}-${body.slice(4)}${checkSign(body)}`;

/** A short code from seven random bytes: "K3M0-8PXY", its last sign a check. */
export function newStickerCode(random: Uint8Array): string {
  if (random.length < BODY) throw new Error("a sticker code needs seven random bytes");
  return written([...random.slice(0, BODY)].map((byte) => SIGNS[byte % SIGNS.length]).join(""));
}

/** The code a unit has until another sticker is put on it. */
export function codeOfUnit(unitId: string): string {
  const hex = sha256Hex(new TextEncoder().encode(`sticker:${unitId}`));
  const bytes = Array.from({ length: BODY }, (_, i) => Number.parseInt(hex.slice(2 * i, 2 * i + 2), 16));
  return newStickerCode(Uint8Array.from(bytes));
}

/** What the QR sign holds: the app's address and the code. */
export const stickerLink = (appUrl: string, code: string): string =>
  `${appUrl.replace(/#.*$/, "").replace(/\/?$/, "/")}#/s/${code}`;

/** The code in a scanned link, or as typed: small letters, no dash, O for 0 and I or L for 1 do no harm. Refused: "sticker-unreadable", "sticker-mistyped". */
export function readSticker(text: string): Outcome<string> {
  const tail = /#\/s\/([^/?#\s]+)/.exec(text)?.[1] ?? text;
  const signs = tail.toUpperCase().replace(/[\s-]/g, "").replaceAll("O", "0").replace(/[IL]/g, "1");
  if (signs.length !== BODY + 1 || [...signs].some((sign) => !SIGNS.includes(sign)))
    return refused("sticker-unreadable");
  const body = signs.slice(0, BODY);
  return checkSign(body) === signs[BODY] ? known(written(body)) : refused("sticker-mistyped");
}

/** The unit that carries this code, or undefined when the sticker is new. */
export function unitOfSticker(book: Book, code: string): string | undefined {
  for (const unit of book.unit.values()) {
    if ((unit.sticker ?? codeOfUnit(unit.id)) === code) return unit.id;
  }
  return undefined;
}
