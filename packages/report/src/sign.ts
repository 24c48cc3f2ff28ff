import { encode } from "uqr";

/** Modules of white around the sign. Source: ISO/IEC 18004, quiet zone of 4 modules (from memory, unverified). */
const QUIET_MODULES = 4;

export interface Sign {
  /** Modules along one side, the quiet zone counted in. */
  readonly modules: number;
  /** The corner of every dark module, in modules. */
  readonly dark: readonly (readonly [x: number, y: number])[];
}

/** The QR sign of a text, for paper and screen alike. */
export function signOf(text: string): Sign {
  const { data, size } = encode(text, { ecc: "Q", border: 0 });
  const dark = data.flatMap((row, y) =>
    row.flatMap((isDark, x) => (isDark ? [[x + QUIET_MODULES, y + QUIET_MODULES] as const] : [])),
  );
  return { modules: size + 2 * QUIET_MODULES, dark };
}
