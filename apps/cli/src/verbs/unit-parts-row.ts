import { known, missing, type Outcome, refused } from "@tapside/quantities";
import {
  LINES,
  type LinesFound,
  lineAsFound,
  linesAsFound,
  type Restrictor,
  type RestrictorFound,
  restrictorAsFound,
  type Unit,
} from "@tapside/reverse-osmosis";
import { all, mapReader, optional, positive, type Reader, word } from "./reader.ts";

const COLUMNS: Readonly<Record<string, string>> = {
  restrictorLPerH: "restrictor_L_h",
  restrictorAtKPaGauge: "restrictor_rated_kPa",
  restrictorAtC: "restrictor_at_C",
  restrictorLaw: "restrictor_law",
  restrictorBoreMm: "restrictor_bore_mm",
  restrictorLengthM: "restrictor_length_m",
};

const columnOf = (field: string): string => COLUMNS[field.replace(/^unit\./, "")] ?? field;

/** The restrictor by its rating, as before, or by what was found: capillary, sharp hole, a measurement with its law. */
export const restrictorOfRow: Reader<Restrictor> = mapReader(
  all({
    restrictorKind: word("restrictor_kind", ["rated", "capillary", "orifice", "measured"], "rated"),
    restrictorLPerH: optional(COLUMNS.restrictorLPerH!),
    restrictorAtKPaGauge: positive(COLUMNS.restrictorAtKPaGauge!, 414),
    restrictorAtC: optional(COLUMNS.restrictorAtC!),
    restrictorLaw: word<"orifice" | "laminar" | "">("restrictor_law", ["orifice", "laminar"], ""),
    restrictorBoreMm: optional(COLUMNS.restrictorBoreMm!),
    restrictorLengthM: optional(COLUMNS.restrictorLengthM!),
  }),
  (row): Outcome<Restrictor> => {
    const { restrictorKind, restrictorLaw, ...numbers } = row;
    for (const [field, value] of Object.entries(numbers))
      if (value !== undefined && !(value > 0))
        return refused("not-positive", { name: columnOf(field), value });
    const told = Object.fromEntries(Object.entries(numbers).filter(([, value]) => value !== undefined));
    const found = restrictorAsFound({
      ...told,
      ...(restrictorLaw && { restrictorLaw }),
      // A rating is taken as it stands, whatever its size.
      ...(restrictorKind !== "rated" && { restrictorKind }),
    } as RestrictorFound);
    if (found.kind === "missing") return missing(...found.missing.map(columnOf));
    if (found.kind === "refused" && found.detail?.name)
      return refused(found.code, { ...found.detail, name: columnOf(String(found.detail.name)) });
    return found;
  },
);

const LINE_COLUMNS = Object.fromEntries(
  LINES.flatMap((line) => [
    [`${line}TubeLengthM`, optional(`${line}_tube_length_m`)],
    [`${line}TubeBoreMm`, optional(`${line}_tube_bore_mm`)],
  ]),
) as { readonly [F in keyof Required<LinesFound>]: Reader<number | undefined> };

/** Lines by their lengths; a bore left blank is the usual one, a length left blank is no line. */
export const linesOfRow: Reader<ReturnType<typeof linesAsFound>> = mapReader(
  all(LINE_COLUMNS),
  (row): Outcome<Pick<Unit, "feedTubes">> => {
    const found = Object.fromEntries(Object.entries(row).filter(([, value]) => value !== undefined));
    for (const line of LINES) {
      const one = lineAsFound(line, found);
      if (one.kind === "refused") {
        const column = one.detail?.name === "boreMm" ? "bore_mm" : "length_m";
        return refused(one.code, { ...one.detail, name: `${line}_tube_${column}` });
      }
    }
    return known(linesAsFound(found));
  },
);
