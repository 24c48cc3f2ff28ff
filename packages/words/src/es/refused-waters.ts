import type { Said } from "../en/said.ts";
import { water } from "./water.ts";

/** Why an analysis, or what is asked of a water, has no answer. */
export const refusedWaters: Readonly<Record<string, Said>> = {
  "no-water": "No hay agua que juzgar.",
  "not-a-reading": ({ reading }) => `${water.name(String(reading))}: ninguna agua puede tener esta lectura.`,
  "readings-contradict": ({ reading }) =>
    `Ninguna agua tiene todas estas lecturas a la vez; la que menos encaja con las demás: ${water.name(String(reading))}. Revise valores y unidades.`,
  "negative-concentration": ({ constituent }) => `${constituent} es menor que cero.`,
  "negative-volume": ({ litres }) => `Un volumen no puede ser menor que cero: ${litres} L.`,
  "negative-tds": ({ tdsPpm }) => `Los sólidos disueltos no pueden ser menores que cero: ${tdsPpm} ppm.`,
  "negative-conductivity": ({ ec25UsPerCm }) =>
    `La conductividad no puede ser menor que cero: ${ec25UsPerCm} µS/cm.`,
  "negative-carbon": "Esta alcalinidad y este pH exigirían carbonato menor que cero: revise ambos.",
  "hydroxide-exceeds-alkalinity":
    "Con este pH el hidróxido solo supera la alcalinidad: revise ambos, o que la alcalinidad sea como CaCO₃.",
  "ph-out-of-range": ({ pH, low, high }) => `El pH ${pH} está fuera de ${low} a ${high}.`,
  "too-concentrated": "Hay más disuelto de lo que admite este modelo: revise la unidad.",
  "no-ph-between-0-and-14": "Ningún pH entre 0 y 14 da esta agua: revise la alcalinidad y los iones fuertes.",
  "not-converged": "No se halló un agua con todos estos valores a la vez: revise el análisis.",
  "recovery-out-of-range": ({ recovery }) => `La recuperación ${recovery} debe estar entre 0 y 1.`,
  "rejection-out-of-range": ({ id, value }) => `El rechazo de ${id}, ${value}, debe estar entre −1 y 1.`,
  "fraction-out-of-range": ({ feedFraction }) =>
    `La parte de agua de entrada, ${feedFraction}, debe estar entre 0 y 1.`,
  "concentration-factor-below-1": ({ concentrationFactor }) =>
    `Hervir no puede diluir: ${concentrationFactor} debe ser 1 o más.`,
  "gas-pressure-out-of-range": ({ co2Atm }) => `El CO₂ de ${co2Atm} atm debe ser mayor que 0, hasta 1.`,
  "nothing-to-mix": "No hay nada que mezclar: no se dio ningún volumen.",
  "too-few-samples": ({ samples, least }) => `${samples} muestras son muy pocas: hacen falta ${least}.`,
  "source-unknown": ({ source }) => `Ninguna fuente del supuesto previo se llama "${source}".`,
  "approach-out-of-range": ({ approach }) =>
    `El acercamiento a la saturación, ${approach}, debe estar entre 0 y 1.`,
  "report-quantity-unknown": ({ quantity }) => `"${quantity}" no es nada conocido de un agua aquí.`,
  "report-figure-twice": ({ quantity }) => `${quantity} está dos veces en el mismo informe.`,
  "report-figure-missing": ({ quantity }) => `${quantity} no tiene cifra.`,
  "report-nothing-known": "La tabla no tiene ninguna cifra de agua conocida aquí.",
  "site-has-two-waters": ({ site, column }) =>
    `${site || "El sitio"}: ${column} difiere entre sus filas; los aparatos de una misma válvula de mezcla reciben la misma agua.`,
  "report-unit-unknown": ({ quantity, unit }) => `${quantity}: "${unit}" no es una unidad conocida para eso.`,
  "report-figure-below-zero": ({ quantity }) => `${quantity} es menor que cero en el informe.`,
  "report-range-reversed": ({ quantity }) => `${quantity}: el intervalo empieza por encima de su final.`,
  "beyond-steel-grade": ({ grade, temperatureC }) =>
    `No hay límite de cloruro publicado para ${grade} a ${temperatureC} °C.`,
};
