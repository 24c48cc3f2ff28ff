import { known, type Outcome, refused } from "@tapside/quantities";

/** A named way to turn temperature into a water permeability factor; stored with every standardised reading. */
export interface TemperatureForm {
  readonly source: string;
  readonly factor: (temperatureC: number) => number;
}

const arrhenius = (kelvin: number, temperatureC: number) =>
  Math.exp(kelvin * (1 / 298 - 1 / (273 + temperatureC)));

/**
 * The temperature forms in use, by the id under which they are stored. All are > 1 when warmer than 25 °C.
 * They differ by 13 % at 10 °C (0.584 to 0.661): one trend, one form.
 */
export const temperatureForms = {
  "1.03^(T-25)": {
    source:
      "3 % per °C: Water Quality Association, Education Kit Vol. X, Art. 4; exponential form unverified",
    factor: (temperatureC) => 1.03 ** (temperatureC - 25),
  },
  "1.028^(T-25) (US Army)": {
    source: "fit to US Army TM 10-4610-309-14, WP 0083, Table 3 (0 to 43 °C, within 0.005)",
    factor: (temperatureC) => 1.028 ** (temperatureC - 25),
  },
  "K=2700": {
    source: "common practice, no source; single constant",
    factor: (temperatureC) => arrhenius(2700, temperatureC),
  },
  "K=3020/2640": {
    source: "common practice, no source; 3020 below and 2640 above 25 °C",
    factor: (temperatureC) => arrhenius(temperatureC < 25 ? 3020 : 2640, temperatureC),
  },
} as const satisfies Record<string, TemperatureForm>;

export type TemperatureFormId = keyof typeof temperatureForms;

export const defaultTemperatureForm: TemperatureFormId = "1.03^(T-25)";

export const isTemperatureFormId = (id: string): id is TemperatureFormId =>
  Object.hasOwn(temperatureForms, id);

/**
 * Water permeability at `temperatureC` over that at 25 °C: > 1 when warm (divide a measured flow by it to get the flow
 * at 25 °C). Some tables print the reciprocal.
 *
 * Formula: one of `temperatureForms`.
 * Source: with each form.
 * Range: 0 to 45 °C; refused outside.
 * Error: the forms differ by up to 13 % at 10 °C; viscosity alone (0.68 at 10 °C) under-corrects.
 * @example
 * ```ts
 * import { temperatureCorrection } from "@tapside/reverse-osmosis";
 * temperatureCorrection("1.03^(T-25)", 10); // => { "kind": "known", "value": 0.642 }
 * ```
 */
export function temperatureCorrection(form: TemperatureFormId, temperatureC: number): Outcome<number> {
  if (!(temperatureC >= 0 && temperatureC <= 45))
    return refused("temperature-out-of-range", { temperatureC });
  return known(temperatureForms[form].factor(temperatureC));
}
