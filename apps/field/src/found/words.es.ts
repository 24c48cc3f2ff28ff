import type { foundEn } from "./words.en.ts";

/** Lo que cuelga allí y cómo está conectado, tal como lo halla un técnico. */
export const foundEs: typeof foundEn = {
  restrictor: "Restrictor",
  restrictorHint: "lo que hay en la línea de drenaje",
  kinds: {
    rated: "Nominal",
    capillary: "Capilar",
    orifice: "Orificio",
    measured: "Medido",
  },
  kindHints: {
    rated: "según su etiqueta",
    capillary: "tubo fino: interior y largo",
    orifice: "borde vivo: interior",
    measured: "vaso y reloj",
  },
  laws: { laminar: "Un tubo fino", orifice: "Un orificio" },
  lawAsk: "¿Es un tubo fino o un orificio? Con agua fría un tubo pasa menos, un orificio casi igual.",
  measures: {
    restrictorLPerH: "Caudal de drenaje",
    restrictorAtKPaGauge: "a la presión",
    restrictorAtC: "en agua de",
    restrictorBoreMm: "Interior",
    restrictorLengthM: "Largo",
  },
  notSaid: "Sin indicar",
  plateStands: "Hasta entonces cuenta el caudal de drenaje de la placa.",
  chooseKind: "Sin indicar: cuenta el drenaje de la placa. Pulse lo que hay; púlselo otra vez para quitarlo.",
  passes: (flow, pressure) => `Deja pasar unos ${flow} a ${pressure} y 20\u00a0°C`,
  colder: (percent) => (percent > 0 ? `, ${percent}\u00a0% menos a 5\u00a0°C.` : ", a 5\u00a0°C lo mismo."),
  beyond: (reynolds) =>
    `Fuera de su rango laminar (Re ${reynolds}): su caudal se conoce a ±\u00a020\u00a0%, y el frío lo frena menos.`,
  lines: "Tubería",
  linesHint: "interiores y largos; puede quedar en blanco",
  lineNames: { feed: "Filtros", permeate: "Al tanque", drain: "Drenaje", outlet: "Del tanque" },
  lineHints: {
    feed: "primer manómetro a membrana",
    permeate: "membrana a tanque",
    drain: "tras el restrictor",
    outlet: "tanque a aparato",
  },
  length: "Largo",
  bore: "Interior",
  byDefault: "por defecto",
  notCounted: "Sin largo, esta línea no se cuenta (por defecto).",
  takes: (pressure) => `Pierde unos ${pressure} con 1 L/min a 20\u00a0°C.`,
  boreUsual: "Interior sin medir: cuenta el usual (por defecto; las paredes varían).",
  allDefault: "no se cuenta (por defecto)",
  next: "Siguiente",
  done: "Listo",
  setUp: "Datos",
};
