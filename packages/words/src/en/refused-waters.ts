import type { Said } from "./said.ts";
import { water } from "./water.ts";

/** Why an analysis, or what is asked of a water, has no answer. */
export const refusedWaters: Readonly<Record<string, Said>> = {
  "no-water": "There is no water to judge.",
  "not-a-reading": ({ reading }) => `${water.name(String(reading))}: no water can have this reading.`,
  "readings-contradict": ({ reading }) =>
    `No water has all these readings at once; what fits the others least: ${water.name(String(reading))}. Check figures and units.`,
  "negative-concentration": ({ constituent }) => `${constituent} is below zero.`,
  "negative-volume": ({ litres }) => `A volume cannot be below zero: ${litres} L.`,
  "negative-tds": ({ tdsPpm }) => `Dissolved solids cannot be below zero: ${tdsPpm} ppm.`,
  "negative-conductivity": ({ ec25UsPerCm }) => `Conductivity cannot be below zero: ${ec25UsPerCm} µS/cm.`,
  "negative-carbon": "This alkalinity and pH would need carbonate below zero: check both.",
  "hydroxide-exceeds-alkalinity":
    "At this pH the hydroxide alone is more than the alkalinity: check both, or that the alkalinity is as CaCO₃.",
  "ph-out-of-range": ({ pH, low, high }) => `pH ${pH} is outside ${low} to ${high}.`,
  "too-concentrated": "More is dissolved than this model holds for: check the unit.",
  "no-ph-between-0-and-14":
    "No pH between 0 and 14 gives this water: check the alkalinity and the strong ions.",
  "not-converged": "No water was found that has all these values at once: check the analysis.",
  "recovery-out-of-range": ({ recovery }) => `Recovery ${recovery} must lie between 0 and 1.`,
  "rejection-out-of-range": ({ id, value }) => `The rejection of ${id}, ${value}, must lie between −1 and 1.`,
  "fraction-out-of-range": ({ feedFraction }) =>
    `The share of feed, ${feedFraction}, must lie between 0 and 1.`,
  "concentration-factor-below-1": ({ concentrationFactor }) =>
    `Boiling down cannot make it thinner: ${concentrationFactor} must be 1 or more.`,
  "gas-pressure-out-of-range": ({ co2Atm }) => `CO₂ of ${co2Atm} atm must lie above 0, up to 1.`,
  "nothing-to-mix": "There is nothing to mix: no volume was given.",
  "too-few-samples": ({ samples, least }) => `${samples} samples are too few: ${least} are needed.`,
  "source-unknown": ({ source }) => `No source of the prior is called "${source}".`,
  "approach-out-of-range": ({ approach }) =>
    `The approach to saturation, ${approach}, must lie between 0 and 1.`,
  "report-quantity-unknown": ({ quantity }) => `"${quantity}" is nothing known of a water here.`,
  "report-figure-twice": ({ quantity }) => `${quantity} stands twice in the same report.`,
  "report-figure-missing": ({ quantity }) => `${quantity} has no figure.`,
  "report-nothing-known": "The table holds no figure of a water known here.",
  "site-has-two-waters": ({ site, column }) =>
    `${site || "The site"}: ${column} differs between its rows; appliances at one blend valve get the same water.`,
  "report-unit-unknown": ({ quantity, unit }) => `${quantity}: "${unit}" is no unit known for it.`,
  "report-figure-below-zero": ({ quantity }) => `${quantity} is below zero in the report.`,
  "report-range-reversed": ({ quantity }) => `${quantity}: the range begins above its end.`,
  "beyond-steel-grade": ({ grade, temperatureC }) =>
    `No chloride limit is published for ${grade} at ${temperatureC} °C.`,
};
