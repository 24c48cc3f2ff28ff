import { encode } from "uqr";

/** Modules of white around the sign. Source: ISO/IEC 18004, quiet zone of 4 modules (from memory, unverified). */
const QUIET_MODULES = 4;

/** A QR sign of plain text as one path of whole modules. */
export function signSvg(text: string): string {
  const { data, size } = encode(text, { ecc: "Q", border: 0 });
  const side = size + 2 * QUIET_MODULES;
  const path = data
    .flatMap((row, y) =>
      row.flatMap((dark, x) => (dark ? [`M${x + QUIET_MODULES} ${y + QUIET_MODULES}h1v1h-1z`] : [])),
    )
    .join("");
  return `<svg viewBox="0 0 ${side} ${side}"><path d="${path}" fill="#000000"/></svg>`;
}
