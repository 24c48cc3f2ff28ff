/** What a maker's label says of a part. */
export interface LabelText {
  readonly lot?: string;
  readonly serial?: string;
  /** The whole text of its code. */
  readonly text: string;
}

/** Separator of elements of variable length in a scanned code (FNC1 as group separator). */
const GS = "\u001d";

/** Elements whose length is fixed by their first two digits, with it. */
const FIXED: Readonly<Record<string, number>> = {
  "00": 20,
  "01": 16,
  "02": 16,
  "11": 8,
  "12": 8,
  "13": 8,
  "15": 8,
  "17": 8,
  "20": 4,
};

/**
 * Lot and serial number in the text of a label's code, where it is an element string: (10) is the lot, (21) the serial number,
 * written with brackets or, as scanners hand it over, without. Any other text is left whole.
 *
 * Source: GS1 General Specifications, sections 3 and 7.8: application identifiers 10 and 21, at most 20 signs each; predefined
 * lengths (from memory, unverified).
 */
export function labelText(scanned: string): LabelText {
  const text = scanned.trim();
  const found = text.startsWith("(") ? bracketed(text) : plain(text.replace(/^\][A-Za-z]\d/, ""));
  const lot = found?.get("10");
  const serial = found?.get("21");
  return { text, ...(lot && { lot }), ...(serial && { serial }) };
}

interface LotAndSerial {
  readonly lot?: string | undefined;
  readonly serial?: string | undefined;
}

/** Lot and serial number after a label was read: what it does not name stays; a code that names neither is the lot. */
export function lotAndSerial(read: LabelText, before: LotAndSerial): LotAndSerial {
  const lot = read.lot ?? (read.serial ? before.lot : read.text);
  const serial = read.serial ?? before.serial;
  return { ...(lot && { lot }), ...(serial && { serial }) };
}

const bracketed = (text: string): ReadonlyMap<string, string> =>
  new Map([...text.matchAll(/\((\d{2,4})\)([^(]*)/g)].map(([, id, value]) => [id!, value!.trim()]));

/** Without brackets only a string that begins as one and reads to its end without a rest is taken for one. */
function plain(text: string): ReadonlyMap<string, string> | undefined {
  if (!text.startsWith("01") && !text.startsWith(GS) && !text.includes(GS)) return undefined;
  const found = new Map<string, string>();
  let rest = afterSeparator(text);
  while (rest !== "") {
    const id = rest.slice(0, 2);
    const end = rest.indexOf(GS);
    const length = FIXED[id] ?? (end < 0 ? rest.length : end);
    const value = rest.slice(2, length);
    if (
      !/^\d\d$/.test(id) ||
      rest.length < length ||
      value.length > 20 ||
      (FIXED[id] && !/^\d+$/.test(value))
    )
      return undefined;
    found.set(id, value);
    rest = afterSeparator(rest.slice(length));
  }
  return found;
}

const afterSeparator = (text: string): string => (text.startsWith(GS) ? text.slice(1) : text);
