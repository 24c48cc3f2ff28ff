/** Forms of silica with a published solubility line. */
export type SilicaForm = "amorphous" | "chalcedony" | "quartz";

const LINE: Readonly<Record<SilicaForm, readonly [number, number]>> = {
  amorphous: [4.52, -731],
  chalcedony: [4.69, -1032],
  quartz: [5.19, -1309],
};

/**
 * Solubility of silica in pure water, mg SiO2 per kg: 10^(a + b/T).
 *
 * Source: Fournier eq. 18 (amorphous); Fournier 1977 for quartz and chalcedony (from memory, unverified).
 * Range: 0–250 °C. Error: 5–10 %; kinetics rule below 100 °C.
 *
 * @example
 * ```ts
 * import { silicaSolubility } from "@tapside/water";
 * silicaSolubility("amorphous", 25); // => 117.0
 * ```
 */
export function silicaSolubility(form: SilicaForm, temperatureC: number): number {
  const [a, b] = LINE[form];
  return 10 ** (a + b / (temperatureC + 273.15));
}
