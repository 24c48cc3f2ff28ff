import type { Packs } from "../words/packs.ts";

export const timerEs: Packs["first"]["timers"] = {
  title: "Esperas",
  none: "Nada está corriendo.",
  start: (what, minutes) => `${what}, ${minutes} min`,
  startHint: "empieza al tocar",
  ready: "listo",
  readySince: "listo desde hace",
  readyFor: (what) => `Listo: ${what}`,
  over: (text) => `pasado por ${text}`,
  of: (minutes) => `de ${minutes} min`,
  stop: "Hecho",
  longer: "5 min más",
  nextForHands: "Lo siguiente para sus manos",
  clockJumped: (minutes) =>
    `El reloj del teléfono se movió ${minutes} mientras esto corría; se cuenta sin eso.`,
  forward: (text) => `${text} hacia adelante`,
  back: (text) => `${text} hacia atrás`,
  atLeast: (text) => `al menos ${text} hacia atrás`,
  tellMe: "Avíseme cuando algo esté listo",
  tellMeHint:
    "una notificación, si este teléfono lo permite; una espera lista también aparece en cada pantalla de la visita",
  willTell:
    "Este teléfono avisará cuando algo esté listo, mientras la aplicación siga abierta en segundo plano.",
  willNotTell:
    "Este teléfono no permite notificaciones aquí. Una espera lista aparece en cada pantalla de la visita.",
  open: "Esperas",
};
