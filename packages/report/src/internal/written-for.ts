/** Whether a font draws a sign, by its code point. */
export type Draws = (codePoint: number) => boolean;

/** Letters without a simpler one inside them, as they are written in a Latin name. */
const LATIN: Readonly<Record<string, string>> = {
  ł: "l",
  đ: "d",
  ø: "o",
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ı: "i",
  þ: "th",
  ð: "d",
  ħ: "h",
  ŋ: "ng",
  "’": "'",
  "‘": "'",
  "“": '"',
  "”": '"',
  "–": "-",
  "—": "-",
};

const paired = (from: string, to: string): Readonly<Record<string, string>> =>
  Object.fromEntries([...from].map((letter, i) => [letter, to.split(" ")[i]!]));

/** One Latin letter for one Cyrillic one. Source: ISO 9:1995, table 1 (from memory, unverified). */
const CYRILLIC = paired(
  "абвгдеёжзийклмнопрстуфхцчшщыэюяіїєґўј",
  "a b v g d e ë ž z i j k l m n o p r s t u f h c č š ŝ y è û â ì ï ê g ŭ j",
);

/** Letter by letter, without the pairs. Source: ISO 843:1997, type 1 (from memory, unverified). */
const GREEK = paired("αβγδεζηθικλμνξοπρσςτυφχψω", "a v g d e z ī th i k l m n x o p r s s t y f ch ps ō");

const KNOWN: Readonly<Record<string, string>> = { ...LATIN, ...CYRILLIC, ...GREEK, ъ: "", ь: "" };

/**
 * A text as a font can draw it: a sign it lacks gives way to the same letter without its marks, to its Latin letter, or at last to an
 * empty box. What a font draws is left as it is.
 */
export function writtenFor(text: string, draws: Draws): string {
  return [...text.normalize("NFC")].map((sign) => drawable(sign, draws)).join("");
}

function drawable(sign: string, draws: Draws): string {
  if (isDrawn(sign, draws)) return sign;
  const bare = [...sign.normalize("NFKD")].filter((part) => !/\p{M}/u.test(part)).join("");
  for (const way of [known(sign), bare, known(bare), plain(known(sign)), plain(known(bare))])
    if (way !== undefined && way !== sign && isDrawn(way, draws)) return way;
  return isDrawn("□", draws) ? "□" : "?";
}

/** Control signs have no drawing and need none. */
const isDrawn = (text: string, draws: Draws): boolean =>
  [...text].every((sign) => sign < " " || draws(sign.codePointAt(0)!));

function known(sign: string): string | undefined {
  const small = sign.toLowerCase();
  const way = KNOWN[small];
  if (way === undefined || small === sign) return way;
  return way.slice(0, 1).toUpperCase() + way.slice(1);
}

const plain = (text: string | undefined): string | undefined =>
  text && [...text.normalize("NFKD")].filter((part) => !/\p{M}/u.test(part)).join("");
