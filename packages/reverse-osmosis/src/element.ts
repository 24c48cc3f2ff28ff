import type { TemperatureFormId } from "./temperature-correction.ts";

/** One membrane element by its transport constants at 25 °C. */
export interface Element {
  readonly areaM2: number;
  /** Water permeability A, L/m²/h/bar. */
  readonly waterLPerM2HBar: number;
  /** Salt permeability B, L/m²/h. */
  readonly saltLPerM2H: number;
  /** Concentration polarisation β at the wall: (Cm − Cp)/(Cb − Cp), constant along the element. */
  readonly polarisation: number;
  readonly temperatureForm: TemperatureFormId;
  /** Feed that slips past seals into the permeate, L/h per bar of net pressure. */
  readonly leakLPerHBar?: number;
  /** Pressure lost along the element at a mean flow, growing with flow to the 1.5. */
  readonly friction?: { readonly dropKPa: number; readonly atLPerH: number };
  /** Names of values that were assumed, not given: "area", "polarisation". */
  readonly assumed?: readonly string[];
}
