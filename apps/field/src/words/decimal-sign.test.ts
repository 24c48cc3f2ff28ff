import { expect, it } from "vitest";
import { decimalSignOfTag } from "./decimal-sign.ts";

// Source: Unicode CLDR, through the platform's own number format.
it.each(
  "en en-GB en-US es es-419 es-AR es-BO es-CL es-CO es-CR es-CU es-DO es-EC es-ES es-GQ es-GT es-HN es-MX es-NI es-PA es-PE es-PR es-PY es-SV es-US es-UY es-VE".split(
    " ",
  ),
)("%s writes the sign of its own numbers", (tag) => {
  const sign = new Intl.NumberFormat(tag).formatToParts(1.5).find((part) => part.type === "decimal");
  expect(decimalSignOfTag(tag)).toBe(sign?.value);
});
