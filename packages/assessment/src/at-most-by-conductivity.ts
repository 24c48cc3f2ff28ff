import type { LimitQuantity } from "@tapside/records";

/**
 * Limiting conductivities at 25 °C in S·cm²/mol of charge: the slowest ions of the other sign that natural water holds.
 * Source: CRC Handbook of Chemistry and Physics, "Ionic conductivity and diffusion at infinite dilution" (from memory, unverified).
 */
const ION = { chloride: 76.31, hydrogenCarbonate: 44.5, sodium: 50.08, halfMagnesium: 53.0 } as const;
const CHLORIDE_MG = 35.45;
const HALF_CACO3_MG = 50.04;

/** mg/L for each µS/cm if the dissolved solids were nothing else; hardness and alkalinity as CaCO₃. */
const MG_PER_US: Readonly<Partial<Record<LimitQuantity, number>>> = {
  chloride: CHLORIDE_MG / (ION.chloride + ION.sodium),
  hardness: HALF_CACO3_MG / (ION.halfMagnesium + ION.hydrogenCarbonate),
  alkalinity: HALF_CACO3_MG / (ION.sodium + ION.hydrogenCarbonate),
};

/** Ions slow each other: at 1000 µS/cm water conducts about 8 % less than its ions would alone. */
const ION_INTERACTION = 1.1;

/**
 * The most of one dissolved thing that water of this conductivity can hold, mg/L (hardness and alkalinity as CaCO₃): as if
 * everything that conducts were it and its slowest partner. Undefined for what does not conduct (silica) and for pH.
 *
 * Formula: c ≤ 1.1 κ M / (λ₊ + λ₋)
 * Source: independent migration of ions (Kohlrausch); 1.1 for the interaction of ions.
 * Range: up to about 1200 µS/cm.
 * Error: an upper bound, never an estimate.
 * @example
 * ```ts
 * import { atMostByConductivity } from "@tapside/assessment";
 * atMostByConductivity("chloride", 40); // => 12.3
 * ```
 */
export function atMostByConductivity(quantity: LimitQuantity, ec25MicroSPerCm: number): number | undefined {
  const perMicroS = MG_PER_US[quantity];
  return perMicroS === undefined ? undefined : ION_INTERACTION * ec25MicroSPerCm * perMicroS;
}
