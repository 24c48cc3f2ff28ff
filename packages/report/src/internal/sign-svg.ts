import { signOf } from "../sign.ts";

/** A QR sign of plain text as one path of whole modules. */
export function signSvg(text: string): string {
  const { modules, dark } = signOf(text);
  const path = dark.map(([x, y]) => `M${x} ${y}h1v1h-1z`).join("");
  return `<svg viewBox="0 0 ${modules} ${modules}"><path d="${path}" fill="#000000"/></svg>`;
}
